import type { VNode } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import { boxIn, fitView, type Size, toPixels, type View } from '../board/view.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { carryLabels, type Placed, placeLabels } from '../drawing/labels.ts';
import { figure } from '../drawing/path-data.ts';
import { keyOfWords, Words } from '../drawing/Words.tsx';
import type { Held } from '../model/grips.ts';
import type { Say } from '../say.ts';
import { useCalm } from '../use-calm.ts';

interface OverlayProps {
  readonly drawing: Drawing;
  readonly view: View;
  /** Of the frame: words stand where it shows them at first. */
  readonly size: Size;
  readonly grips: readonly Held[];
  /** Something on the sheet is being dragged: words go along, and look for better seats once it is calm. */
  readonly moving: boolean;
  readonly say: Say;
}

/** Words and arrow heads over the awake board, in pixels. */
export function Overlay({ drawing, view, size: { width, height }, grips, moving, say }: OverlayProps): VNode {
  const steady = steadyScale(view.scale);
  const stood = useRef<readonly Placed[]>([]);
  const rings = useMemo(() => grips.map(({ at }) => at), [grips]);
  const calm = useCalm(drawing, moving) === drawing;
  const placed = useMemo(() => {
    const within = boxIn(fitView(drawing.box, { width, height }), { width, height });
    const place = calm ? placeLabels : carryLabels;
    stood.current = place(drawing, steady, say.message, { rings, before: stood.current, within });
    return stood.current;
  }, [drawing, rings, calm, steady, say, width, height]);
  return (
    <svg
      class="sheet-words"
      data-view={`${view.scale} ${view.origin.x} ${view.origin.y}`}
      aria-hidden="true"
      focusable="false"
    >
      {grips.map(({ key, at, handle }) =>
        handle ? <Stem key={key} from={toPixels(view, handle.root)} to={toPixels(view, at)} /> : null,
      )}
      {drawing.parts.map((part) =>
        part.kind === 'arrow' ? (
          <Head
            key={JSON.stringify(part)}
            from={toPixels(view, part.from)}
            to={toPixels(view, part.to)}
            tone={part.tone}
          />
        ) : null,
      )}
      {placed.map((words) => {
        const at = toPixels(view, words.anchor);
        return (
          <g key={keyOfWords(words)} transform={`translate(${figure(at.x)} ${figure(at.y)})`}>
            <Words {...words} />
          </g>
        );
      })}
    </svg>
  );
}

/** Words change their seats only when the sheet is zoomed by a good step, not at every turn of the wheel. */
function steadyScale(scale: number): number {
  const step = 2 ** (1 / 4);
  return step ** Math.round(Math.log(scale) / Math.log(step));
}

function Head({ from, to, tone }: { readonly from: Point; readonly to: Point; readonly tone: string }): VNode {
  const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return (
    <path
      class={`head head--${tone}`}
      transform={`translate(${figure(to.x)} ${figure(to.y)}) rotate(${figure(turn)})`}
      d="M0 0-8-3.2-6.2 0-8 3.2Z"
    />
  );
}

/** What a handle of a curve hangs on. */
function Stem({ from, to }: { readonly from: Point; readonly to: Point }): VNode {
  return <path class="grip-stem" d={`M${figure(from.x)} ${figure(from.y)}L${figure(to.x)} ${figure(to.y)}`} />;
}
