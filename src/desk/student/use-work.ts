import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import { LINK_PREFIX, readSetLink } from '../../exchange/set-link.ts';
import type { Student } from '../../exchange/student.ts';
import { type Kept, storageIn } from '../../table/store/storage.ts';
import { type Message, message } from '../../words/message.ts';
import { keepSet, keptSet } from './kept-set.ts';

export const local = storageIn(() => window.localStorage);

const NAME = 'gorgeline.student';
const NUMBER = 'gorgeline.number';

/** Who works in this browser, as was written last. */
export function keptStudent(): Student {
  return { student: local.read(NAME) ?? '', number: local.read(NUMBER) ?? '' };
}

export interface Work {
  /** Null before the page is awake, and where none is open. */
  readonly set: ProblemSet | null;
  readonly awake: boolean;
  readonly trouble: Message | null;
  readonly kept: Kept;
  readonly open: (set: ProblemSet) => void;
  /** Looks again at how far the drafts have come. */
  readonly look: () => void;
  readonly student: Student;
  readonly setStudent: (student: Student) => void;
}

/** The set a student works on, from the address or as it was opened last, and who the student is. */
export function useWork(exercises: readonly Name[]): Work {
  const [set, setSet] = useState<ProblemSet | null>(null);
  const [awake, setAwake] = useState(false);
  const [trouble, setTrouble] = useState<Message | null>(null);
  const [kept, setKept] = useState<Kept>('kept');
  const [student, setStudent] = useState<Student>({ student: '', number: '' });
  const look = useLook();
  const open = (opened: ProblemSet): void => {
    setSet(opened);
    setTrouble(null);
    setKept(keepSet(local, opened));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is read as the page wakes, and whenever another link is followed.
  useEffect(() => {
    const take = (): void => {
      const { hash } = window.location;
      if (hash.startsWith(`#${LINK_PREFIX}`)) {
        const read = readSetLink(hash, exercises);
        if (read.ok) open(read.set);
        else setTrouble(message('desk.open-failed', { why: { said: refusalOf(read.faults) } }));
      } else {
        const last = keptSet(local, exercises);
        if (last) open(last);
      }
      setAwake(true);
    };
    setStudent(keptStudent());
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, []);
  return {
    set,
    awake,
    trouble,
    kept,
    open,
    look,
    student,
    setStudent: (next) => {
      setStudent(next);
      local.write(NAME, next.student);
      local.write(NUMBER, next.number);
    },
  };
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
