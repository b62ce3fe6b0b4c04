import type { VNode } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { MarkedWork } from '../../../exchange/mark-work.ts';
import { heightOf, widthOf } from '../../../table/drawing/box.ts';
import { SheetDrawing } from '../../../table/drawing/SheetDrawing.tsx';
import type { Say } from '../../../table/say.ts';
import { spelled } from '../../../words/unseen.ts';
import { markedDrawing } from './marked-drawing.ts';
import { workingSentences } from './working-sentences.ts';

/** How wide the draft stands beside its working and on a phone, px: its words are seated for that. */
const WIDTHS = [540, 300] as const;

/** The draft with the red pencil on it, and its working step by step. */
export function PieceDraft({ marked, say }: { readonly marked: MarkedWork; readonly say: Say }): VNode {
  const { steps } = marked.handIn;
  const [upTo, setUpTo] = useState(steps.length);
  const { unit } = say.reader;
  const drawing = useMemo(() => markedDrawing(marked, unit, upTo), [marked, unit, upTo]);
  const working = useMemo(() => workingSentences(marked, say.reader), [marked, say]);
  if ('message' in drawing) return <p class="trouble">{say.message(drawing.message)}</p>;
  const slope = heightOf(drawing.box) / widthOf(drawing.box);
  return (
    <>
      <div class="piece-sheet">
        <SheetDrawing
          drawing={drawing}
          reader={say.reader}
          id="piece"
          heights={[WIDTHS[0] * slope, WIDTHS[1] * slope]}
        />
      </div>
      <div>
        <Stepping upTo={upTo} of={steps.length} say={say} onStep={setUpTo} />
        <ol class="piece-working">
          {working.map((sentence, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the steps stand still.
            <li key={index} data-ahead={index >= upTo}>
              {spelled(sentence)}
            </li>
          ))}
        </ol>
      </div>
    </>
  );
}

interface SteppingProps {
  readonly upTo: number;
  readonly of: number;
  readonly say: Say;
  readonly onStep: (upTo: number) => void;
}

/** Through the working, a step at a time. */
function Stepping({ upTo, of, say, onStep }: SteppingProps): VNode {
  return (
    <div class="ends">
      <button type="button" class="button" data-do="piece-back" disabled={upTo === 0} onClick={() => onStep(upTo - 1)}>
        {say('mark.step-back')}
      </button>
      <button type="button" class="button" data-do="piece-on" disabled={upTo === of} onClick={() => onStep(upTo + 1)}>
        {say('mark.step-on')}
      </button>
      <span role="status">{say('mark.step-at', { at: upTo, of })}</span>
    </div>
  );
}
