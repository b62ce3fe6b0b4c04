import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { readSet } from '../../exchange/read-set.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import { setLink } from '../../exchange/set-link.ts';
import { type Say, sayFor } from '../../table/say.ts';
import { useReader } from '../../table/use-reader.ts';
import './setting.css';
import { spelled } from '../../words/unseen.ts';
import { Chosen } from './Chosen.tsx';
import { Conditions } from './Conditions.tsx';
import type { LessonCards } from './exercise-card.ts';
import { HandOut } from './HandOut.tsx';
import { Pool } from './Pool.tsx';
import { PrintedSheet } from './PrintedSheet.tsx';
import { type Change, type Sheet, withoutStrayRules } from './sheet.ts';
import { UnreadSet } from './UnreadSet.tsx';
import { useSetSheet } from './use-set-sheet.ts';

interface SetMakerProps {
  readonly lessons: readonly LessonCards[];
  /** Where students open a set, from the page's own address. */
  readonly way: string;
  readonly language: string;
}

/** The desk on which a teacher makes a problem set. */
export function SetMaker({ lessons, way, language }: SetMakerProps): VNode {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const cards = useMemo(
    () => new Map(lessons.flatMap(({ exercises }) => exercises).map((card) => [card.id, card])),
    [lessons],
  );
  const { sheet, change, clear, kept, unread } = useSetSheet([...cards.keys()], say('desk.name-start'));
  const rules = [...new Set(sheet.exercises.flatMap(({ exercise }) => cards.get(exercise)?.rules ?? []))];
  const set = withoutStrayRules(sheet, rules);
  const address = addressOf(way, set);
  const open = (text: string): string => {
    const read = readSet(text, [...cards.keys()]);
    if (!read.ok) return say('desk.open-failed', { why: { said: refusalOf(read.faults) } });
    change(() => read.set);
    return spelled(say('desk.opened-set', { title: read.set.title }));
  };
  if (unread !== null) return <UnreadSet unread={unread} say={say} onBegin={clear} />;
  // Nothing is built but the place for it: the sheet that was kept would push aside another.
  if (kept === null) return <div class="desk" />;
  return (
    <div class="desk">
      <div class="desk-sheet">
        <Heading sheet={sheet} say={say} change={change} />
        <Chosen sheet={sheet} cards={cards} say={say} change={change} />
        <Conditions sheet={sheet} rules={rules} say={say} change={change} />
        <HandOut sheet={set} address={address} say={say} onOpen={open} onClear={clear} />
        <p class="desk-note">{kept === 'kept' ? say('desk.kept') : say('desk.not-kept')}</p>
      </div>
      <Pool sheet={sheet} lessons={lessons} say={say} change={change} />
      <PrintedSheet sheet={set} cards={cards} address={address} say={say} />
    </div>
  );
}

/** What stands at its head: the title, and a word to the class. */
function Heading({ sheet, say, change }: { readonly sheet: Sheet; readonly say: Say; readonly change: Change }): VNode {
  return (
    <>
      <label class="field">
        <span>{say('desk.name')}</span>
        <input
          type="text"
          name="title"
          maxLength={200}
          value={sheet.title}
          onInput={({ currentTarget }) => change((now) => ({ ...now, title: currentTarget.value }))}
        />
      </label>
      <label class="field">
        <span>{say('desk.note')}</span>
        <textarea
          name="note"
          rows={3}
          maxLength={2000}
          value={sheet.note}
          onInput={({ currentTarget }) => change((now) => ({ ...now, note: currentTarget.value }))}
        />
      </label>
    </>
  );
}

/** The whole address under which students find the set; null before the page is awake, or where it would be too long. */
function addressOf(way: string, set: Parameters<typeof setLink>[0]): string | null {
  const link = setLink(set);
  return link.ok && typeof window === 'object' ? new URL(`${way}#${link.hash}`, window.location.href).href : null;
}
