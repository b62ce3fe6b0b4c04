import type { VNode } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { sayFor } from '../../table/say.ts';
import { useReader } from '../../table/use-reader.ts';
import type { ExerciseCard } from '../setting/exercise-card.ts';
import { ClassList } from './book/ClassList.tsx';
import { Intray } from './intake/Intray.tsx';
import { KeepingNotice } from './keeping/KeepingNotice.tsx';
import { useKeeping } from './keeping/use-keeping.ts';
import { isBare, isWorkless } from './keeping/work-of.ts';
import { Marked } from './Marked.tsx';
import './marking.css';
import './piece/own-marks.css';
import { useMarkingDesk } from './use-marking-desk.ts';
import { useStand } from './use-stand.ts';

interface MarkingDeskProps {
  readonly cards: readonly ExerciseCard[];
  /** Where the exercises lie, whole, from the page's own address. */
  readonly exercises: string;
  readonly language: string;
}

/** The desk on which hand-ins are marked: what came in, the gradebook, and what the class has misunderstood. */
export function MarkingDesk({ cards, exercises, language }: MarkingDeskProps): VNode {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const titles = useMemo(() => new Map(cards.map(({ id, title }) => [id, title])), [cards]);
  const names = useMemo(() => cards.map(({ id }) => id), [cards]);
  const place = useRef<HTMLDivElement>(null);
  const desk = useMarkingDesk(exercises);
  const bare = isBare(desk.held);
  const kept = useStand(useKeeping(desk, names), place, isWorkless(desk.held));
  return (
    <div class="marking" ref={place}>
      <Intray desk={desk} say={say} />
      {/* Above the notices, and not while marking is under way: it is moved by nothing that comes by itself. */}
      {desk.held.taken.length > 0 || desk.progress !== null ? null : (
        <ClassList notes={desk.held.notes} awake={kept.keeping.state !== 'waiting'} onWrite={desk.write} say={say} />
      )}
      <KeepingNotice kept={kept} bare={bare} say={say} />
      {desk.held.taken.length === 0 ? null : (
        <Marked desk={desk} kept={kept} titles={titles} exercises={exercises} say={say} />
      )}
    </div>
  );
}
