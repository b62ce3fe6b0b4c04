import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import { LINK_PREFIX, readSetLink } from '../../exchange/set-link.ts';
import { type Student, writtenStudent } from '../../exchange/student.ts';
import { isTrial, local, TRIAL_PREFIX } from '../../table/store/own-storage.ts';
import type { Kept } from '../../table/store/storage.ts';
import { type Message, message } from '../../words/message.ts';
import { setIn } from './in-set.ts';
import { keepSet, keptSet } from './kept-set.ts';

const NAME = 'gorgeline.student';
const NUMBER = 'gorgeline.number';

/** Who works in this browser, as was written last. */
export function keptStudent(): Student {
  return writtenStudent({ student: local.read(NAME) ?? '', number: local.read(NUMBER) ?? '' });
}

export interface Work {
  /** Null before the page is awake, and where none is open. */
  readonly set: ProblemSet | null;
  /** Whether it is only looked at as a student would see it. */
  readonly trial: boolean;
  readonly awake: boolean;
  readonly trouble: Message | null;
  readonly kept: Kept;
  readonly open: (set: ProblemSet) => void;
  /** Notes how a draft was kept: what could not be is gone with the page. */
  readonly noteKept: (kept: Kept) => void;
  /** Looks again at how far the drafts have come. */
  readonly look: () => void;
  readonly student: Student;
  readonly setStudent: (student: Student) => void;
}

/** The set a student works on, from the address or as it was opened last, and who the student is. */
export function useWork(exercises: readonly Name[]): Work {
  const [set, setSet] = useState<ProblemSet | null>(null);
  const [trial, setTrial] = useState(false);
  const [awake, setAwake] = useState(false);
  const [trouble, setTrouble] = useState<Message | null>(null);
  const [kept, setKept] = useState<Kept>('kept');
  const [student, noteStudent] = useState<Student>({ student: '', number: '' });
  const look = useLook();
  const open = (opened: ProblemSet): void => {
    setSet(opened);
    setTrouble(null);
    setKept(keepSet(local, opened));
  };
  const setStudent = (typed: Student): void => {
    const next = writtenStudent(typed);
    noteStudent(next);
    local.write(NAME, next.student);
    local.write(NUMBER, next.number);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is read as the page wakes, and whenever another link is followed.
  useEffect(() => {
    const take = (): void => {
      const { hash } = window.location;
      const found = meantSet(hash, exercises);
      if (found !== null && 'key' in found) setTrouble(found);
      else if (found !== null) open(found);
      noteStudent(keptStudent());
      setTrial(isTrial(hash));
      setAwake(true);
    };
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, []);
  const noteKept = (now: Kept): void => {
    if (now !== 'kept') setKept(now);
  };
  return { set, trial, awake, trouble, kept, open, noteKept, look, student, setStudent };
}

/** The set that an address means, or why it cannot be opened: one that stands in it whole, or one that is kept here. Null of none. */
function meantSet(
  hash: string,
  exercises: readonly Name[],
): ProblemSet | Extract<Message, { readonly key: string }> | null {
  const link = linkIn(hash);
  if (link === null) return keptSet(local, exercises, setIn(hash) ?? undefined);
  const read = readSetLink(link, exercises);
  return read.ok ? read.set : message('desk.open-failed', { why: { said: refusalOf(read.faults) } });
}

/** A set that stands in the address whole, to be worked on or to be looked at; null where none does. */
function linkIn(hash: string): string | null {
  if (hash.startsWith(`#${LINK_PREFIX}`)) return hash;
  return isTrial(hash) && setIn(hash) === null ? hash.replace(TRIAL_PREFIX, LINK_PREFIX) : null;
}

/** Looks again at what is kept when asked to, and whenever the reader comes back to this page. */
function useLook(): () => void {
  const [, seen] = useState(0);
  const look = useCallback(() => seen((times) => times + 1), []);
  useEffect(() => {
    const occasions = ['pageshow', 'focus', 'storage'] as const;
    for (const occasion of occasions) window.addEventListener(occasion, look);
    return () => {
      for (const occasion of occasions) window.removeEventListener(occasion, look);
    };
  }, [look]);
  return look;
}
