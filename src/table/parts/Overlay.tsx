import { Fragment, type VNode } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import { boxIn, fitView, isSame, onPaper, type Size, type View } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';
import type { ArrowPart, Drawing } from '../drawing/drawing.ts';
import { carryLabels, type Placed, placeLabels } from '../drawing/labels.ts';
import { figure, runBetween } from '../drawing/path-data.ts';
import { keysOfWords, Words } from '../drawing/Words.tsx';
import { type InMotion, useMotion } from '../in-motion.ts';
import type { Held } from '../model/grips.ts';
import type { Say } from '../say.ts';
import { useCalm } from '../use-calm.ts';
import { Lifted } from './Lifted.tsx';
import { useDrawn } from './use-drawn.ts';

interface OverlayProps {
  readonly board: AwakeSheet;
  readonly drawing: Drawing;
  readonly view: View;
  /** Of the frame: words stand where it shows them at first. */
  readonly size: Size;
  readonly grips: readonly Held[];
  /** Something on the sheet is being nudged or dragged: words go along, and look for better seats once it is calm. */
  readonly moving: boolean;
  readonly motion: InMotion;
  readonly say: Say;
}

/** Words and arrow heads over the awake board, in pixels from the sheet's origin. */
export function Overlay(props: OverlayProps): VNode {
  const scene = useMotion(props.motion);
  const { drawing, grips } = scene ?? props;
  const { scale, origin } = props.view;
  const placed = usePlaced({ ...props, drawing, grips, moving: props.moving || scene !== null });
  const stems = useDrawn((held: Held) => <Stem key={held.key} held={held} scale={scale} />, [scale]);
  const heads = useDrawn((part: ArrowPart) => <Head key={JSON.stringify(part)} part={part} scale={scale} />, [scale]);
  const words = useDrawn(
    (one: Placed, key: string) => <Words key={key} {...one} at={onPaper(one.anchor, scale)} />,
    [scale],
  );
  const rests = useRests(scene !== null, grips, drawing.parts, placed);
  const { still, moving } = useMemo(() => {
    const keys = keysOfWords(placed);
    const all: readonly (readonly [object, VNode])[] = [
      ...grips.flatMap((held) => (held.handle ? [[held, stems(held, held.key)] as const] : [])),
      ...drawing.parts.flatMap((part) => (part.kind === 'arrow' ? [[part, heads(part, '')] as const] : [])),
      ...placed.map((one, index) => [one, words(one, keys[index] as string)] as const),
    ];
    const of = (resting: boolean): readonly VNode[] =>
      all.flatMap(([thing, node]) => ((rests?.has(thing) ?? true) === resting ? [node] : []));
    return { still: of(true), moving: of(false) };
  }, [grips, drawing.parts, placed, rests, stems, heads, words]);
  const same = useSame(still);
  // Passed over where nothing in it has changed, also while the paper is moved.
  const lying = useMemo(() => <Fragment>{same}</Fragment>, [same]);
  return (
    <>
      {scene ? (
        <Lifted board={props.board} origin={origin}>
          {moving}
        </Lifted>
      ) : null}
      <svg class="sheet-words" data-view={`${scale} ${origin.x} ${origin.y}`} aria-hidden="true" focusable="false">
        <g transform={`translate(${figure(origin.x)} ${figure(origin.y)})`}>{lying}</g>
      </svg>
    </>
  );
}

/** A list, as the very one of the last time where all in it is the same. */
function useSame<Thing>(now: readonly Thing[]): readonly Thing[] {
  const last = useRef(now);
  if (now.length !== last.current.length || now.some((one, index) => one !== last.current[index])) last.current = now;
  return last.current;
}

/** What lies as it lay when the hand that moves now was last still; null while none moves. */
function useRests(moving: boolean, ...things: readonly (readonly object[])[]): ReadonlySet<object> | null {
  const last = useRef(things);
  if (!moving) last.current = things;
  const resting = moving ? last.current : null;
  return useMemo(() => (resting ? new Set(resting.flat()) : null), [resting]);
}

/** The words with their seats: the best while all is calm, those they had while something is moving. */
function usePlaced({ drawing, view, size, grips, moving, say }: OverlayProps): readonly Placed[] {
  const { width, height } = size;
  const steps = steadyScale(view.scale);
  const shown = useShown(view, drawing.box, size);
  const stood = useRef<readonly Placed[]>([]);
  const rings = useMemo(() => grips.map(({ at }) => at), [grips]);
  return useMemo(() => {
    const within = boxIn(fitView(drawing.box, { width, height }), { width, height });
    const around = { rings, before: stood.current, within, shown };
    stood.current = moving ? carryLabels(drawing, steps, around) : placeLabels(drawing, steps, say.message, around);
    return stood.current;
  }, [drawing, rings, moving, steps, say, width, height, shown]);
}

/** What of the sheet is in sight once the view lies still, mm; null where that is all. */
function useShown(view: View, box: Box, { width, height }: Size): Box | null {
  const now = useMemo(() => ({ view, size: { width, height } }), [view, width, height]);
  const still = useCalm(now, true);
  return useMemo(
    () => (isSame(still.view, fitView(box, still.size)) ? null : boxIn(still.view, still.size)),
    [still, box],
  );
}

/** Words change their seats only when the sheet is zoomed by a good step, not at every turn of the wheel. */
function steadyScale(scale: number): number {
  const step = 2 ** (1 / 4);
  return step ** Math.round(Math.log(scale) / Math.log(step));
}

function Head({ part, scale }: { readonly part: ArrowPart; readonly scale: number }): VNode {
  const [from, to] = [onPaper(part.from, scale), onPaper(part.to, scale)];
  const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return (
    <path
      class={`head head--${part.tone}`}
      transform={`translate(${figure(to.x)} ${figure(to.y)}) rotate(${figure(turn)})`}
      d="M0 0-8-3.2-6.2 0-8 3.2Z"
    />
  );
}

/** What a handle of a curve hangs on. */
function Stem({ held: { at, handle }, scale }: { readonly held: Held; readonly scale: number }): VNode {
  const [from, to] = [onPaper(handle?.root ?? at, scale), onPaper(at, scale)];
  return <line class="grip-stem" {...runBetween(from, to)} />;
}
