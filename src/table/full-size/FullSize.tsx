import type { VNode } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Say } from '../say.ts';
import './full-size.css';
import { type FullDrawing, fullDrawing, type Wanted } from './full-drawing.ts';
import { PaperSheet } from './PaperSheet.tsx';
import { Plan } from './Plan.tsx';
import { PAPERS, type Paper } from './papers.ts';
import { printPages } from './print.tsx';
import { SCALE } from './Scales.tsx';
import { codeOf, type Tile, tilesOf } from './tiles.ts';

export interface FullSizeProps {
  readonly sheet: Sheet;
  readonly givens: Givens;
  readonly shows: readonly Name[];
  /** What the draft is of, and whose: both go on every sheet. */
  readonly title: string;
  readonly student: string;
  readonly say: Say;
}

/** The draft in sheets of paper at its full size: which paper, how the sheets will lie, and off to the printer. */
export function FullSize(props: FullSizeProps): VNode {
  const { sheet, givens, shows, say } = props;
  const { reader } = say;
  const [chosen, setChosen] = useState<Paper | null>(null);
  const paper = chosen ?? (reader.unit === 'in' ? 'letter' : 'a4');
  const [lines, setLines] = useState<Wanted['lines']>('all');
  const full = useMemo(
    () => fullDrawing({ sheet, givens, shows, lines }, reader),
    [sheet, givens, shows, lines, reader],
  );
  const tiles = useMemo(() => tilesOf(full.drawing.box, full.ink, paper), [full, paper]);
  return (
    <div class="full-size">
      <p>{say('paper.lead')}</p>
      <PaperField paper={paper} say={say} onPaper={setChosen} />
      <HelpsTick lines={lines} say={say} onLines={setLines} />
      <Plan full={full} tiles={tiles} says={say('paper.plan', { count: tiles.length })} />
      <p>{say('paper.how', { count: tiles.length })}</p>
      <p class="setup-note">{say('paper.care')}</p>
      <button
        type="button"
        class="button"
        data-do="print-full"
        onClick={() => printPages(<Pages {...props} {...{ paper, full, tiles }} />)}
      >
        {say('paper.print', { count: tiles.length })}
      </button>
    </div>
  );
}

interface PaperFieldProps extends Pick<FullSizeProps, 'say'> {
  readonly paper: Paper;
  readonly onPaper: (paper: Paper) => void;
}

function PaperField({ paper, say, onPaper }: PaperFieldProps): VNode {
  return (
    <label class="field">
      <span>{say('paper.paper')}</span>
      <select name="paper" value={paper} onChange={({ currentTarget }) => onPaper(currentTarget.value as Paper)}>
        {PAPERS.map((one) => (
          <option key={one} value={one}>
            {say(`paper.${one}`)}
          </option>
        ))}
      </select>
    </label>
  );
}

interface HelpsTickProps extends Pick<FullSizeProps, 'say'> {
  readonly lines: Wanted['lines'];
  readonly onLines: (lines: Wanted['lines']) => void;
}

/** Whether the lines drawn for help are printed too. */
function HelpsTick({ lines, say, onLines }: HelpsTickProps): VNode {
  return (
    <label class="full-size-tick">
      <input
        type="checkbox"
        name="helps"
        checked={lines === 'all'}
        onChange={({ currentTarget }) => onLines(currentTarget.checked ? 'all' : 'answers')}
      />
      <span>{say('paper.helps')}</span>
    </label>
  );
}

interface PagesProps extends FullSizeProps {
  readonly paper: Paper;
  readonly full: FullDrawing;
  readonly tiles: readonly Tile[];
}

function Pages({ title, student, say, paper, full, tiles }: PagesProps): VNode {
  const { unit } = say.reader;
  const what = [title, student].filter((word) => word.trim() !== '').join(' · ');
  const measure = say('paper.measure', { length: { mm: SCALE[unit].long } });
  return (
    <>
      {tiles.map((tile, index) => (
        <PaperSheet
          key={codeOf(tile)}
          says={say('paper.says', { what, code: codeOf(tile), number: index + 1, of: tiles.length })}
          {...{ tile, beside: tiles, paper, full, measure, unit }}
        />
      ))}
    </>
  );
}
