import type { VNode } from 'preact';
import { COUNTS, type Counts } from '../../../exchange/class/counting.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import type { Say } from '../../../table/say.ts';
import { momentText } from '../../../words/moment.ts';
import { Choice } from '../../setting/Choice.tsx';
import type { Sound } from '../intake/taken.ts';
import { studentName } from '../student-name.ts';
import { tidyMarks } from '../tidy-marks.ts';

interface EarlierWorkProps {
  readonly others: readonly Sound[];
  /** Which of several attempts counts. */
  readonly counts: Counts;
  readonly onCounts: (counts: Counts) => void;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
  readonly onOpen: (piece: Sound) => void;
}

/** Work of which another piece counts, and which that is: it counts for nothing, and can be looked at. */
export function EarlierWork({ others, counts, onCounts, titles, say, onOpen }: EarlierWorkProps): VNode | null {
  if (others.length === 0) return null;
  return (
    <details class="earlier">
      <summary>
        {say('mark.repeated', { repeated: others.length })} {say(`mark.counts-now.${counts}`)}
      </summary>
      <Choice
        says={say('mark.counts')}
        value={counts}
        among={COUNTS.map((name) => [name, say(`mark.counts.${name}`)] as const)}
        onChoice={onCounts}
      />
      <ul>
        {byStudent(others, say).map((piece) => (
          <li key={handInLine(piece.handIn)}>
            <button type="button" class="link" data-do="open-earlier" onClick={() => onOpen(piece)}>
              {say('class.earlier', {
                student: studentName(piece.row, say),
                title: titles.get(piece.row.exercise) ?? piece.row.exercise,
                when: savedText(piece, say),
              })}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** By name, and those of one student in the order they came. */
function byStudent(others: readonly Sound[], say: Say): readonly Sound[] {
  const { compare } = new Intl.Collator(say.reader.language);
  return others.toSorted((a, b) => compare(studentName(a.row, say), studentName(b.row, say)));
}

interface VersionsProps {
  readonly versions: readonly Sound[];
  readonly open: Sound;
  readonly counts: Sound | undefined;
  readonly say: Say;
  readonly onOpen: (piece: Sound) => void;
}

/** All that one student handed in for one exercise, where it is more than once, the one that lies open marked. */
export function Versions({ versions, open, counts, say, onOpen }: VersionsProps): VNode | null {
  if (versions.length < 2) return null;
  return (
    <nav class="versions" aria-label={say('class.versions')}>
      {versions.map((piece) => (
        <button
          type="button"
          class="button"
          key={handInLine(piece.handIn)}
          aria-current={piece === open ? 'true' : undefined}
          onClick={() => onOpen(piece)}
        >
          {say(piece === counts ? 'class.version-counts' : 'class.version', {
            when: savedText(piece, say),
            marks: tidyMarks(piece.entry.marks),
            of: tidyMarks(piece.entry.of),
          })}
        </button>
      ))}
    </nav>
  );
}

function savedText({ row }: Sound, say: Say): string {
  return row.saved === null ? say('mark.no-date') : momentText(row.saved, say.reader.language);
}
