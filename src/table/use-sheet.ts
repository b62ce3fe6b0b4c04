import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Box } from './drawing/box.ts';
import type { InMotion } from './in-motion.ts';
import type { Bench, Draft, Room } from './model/bench.ts';
import { dragged, gripsOf, type Held } from './model/grips.ts';
import { moved } from './model/moved.ts';
import { pictureOf } from './model/picture.ts';
import { type Pointed, pointAt, takenUp } from './model/point-at.ts';
import { type Preview, previewOf } from './model/preview.ts';
import { noPencil, redPencil } from './model/red-pencil.ts';
import { sheetOf } from './model/reduce.ts';
import { rightPlaces } from './model/right-places.ts';
import { sayWhere } from './model/say-change.ts';
import { type Scene, steadyScene } from './model/scene.ts';
import { homeOf, shownOn } from './model/sheet-box.ts';
import { steady } from './model/steady.ts';
import type { Looks } from './parts/Ahead.tsx';
import type { Say } from './say.ts';
import { UnderPointer } from './under-pointer.ts';
import type { Dispatch } from './use-bench.ts';
import { type Marking, targetsBy } from './use-marking.ts';

interface SheetInputs {
  readonly exercise: Exercise;
  readonly room: Room;
  readonly bench: Bench;
  /** Whether something nudged on the sheet is moving at this moment. */
  readonly moving: boolean;
  /** What is dragged there. */
  readonly motion: InMotion;
  readonly dispatch: Dispatch;
  readonly say: Say;
  readonly speak: (text: string) => void;
  readonly marking: Marking;
  readonly toFirst: number;
}

/** The sheet as it looks and as it is pointed at, and the sentence beside it. */
export function useSheet(inputs: SheetInputs) {
  const { exercise, room, bench, say, speak } = inputs;
  const { steps, upTo } = bench;
  const pointer = useMemo(() => new UnderPointer(), []);
  const shown = useMemo(() => shownOn(exercise.shows, room.givens), [exercise, room]);
  const scenes = useScenes(inputs, shown);
  const scene = useMemo(() => scenes.still({ steps, upTo }), [scenes, steps, upTo]);
  const { sheet, drawing, home, grips } = scene;
  const looks = useLooks(pointer, inputs, sheet);
  const hands = { ...pointingOn(inputs, sheet, shown), ...draggingOn(inputs, scene, scenes) };
  return {
    sheet,
    shown,
    light: pointer.light,
    sheetProps: {
      id: `sheet-${exercise.id}`,
      drawing,
      home,
      grips,
      say,
      looks,
      holding: bench.hand !== null,
      dragging: bench.dragging !== null,
      moving: inputs.moving,
      motion: inputs.motion,
      onHover: pointer.point,
      onSay: speak,
      ...hands,
    },
    sentenceProps: sentenceBeside(inputs, { sheet, looks, shown, onDrawn: () => pointer.point(null) }),
  };
}

/** The sentence in hand, beside the sheet as it looks. */
function sentenceBeside<Seen>({ bench, exercise, say, dispatch, toFirst }: SheetInputs, seen: Seen) {
  return { ...seen, hand: bench.hand, targets: exercise.targets, say, dispatch, toFirst };
}

/** What the step would make if the pointer pressed where it is, or as far as the blanks are filled. */
function useLooks(pointer: UnderPointer, { bench: { hand, steps, upTo }, room }: SheetInputs, sheet: Sheet): Looks {
  // What was pointed at was meant for the tool and the blank of that moment.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of hand that counts.
  useLayoutEffect(() => pointer.point(null), [pointer, hand]);
  return useMemo(() => {
    const ahead = (pointed: Pointed | null): Preview =>
      previewOf({ steps, upTo }, hand && pointed ? takenUp(hand, pointed) : hand, sheet, room);
    return { pointer, ahead: keepLast(ahead), sheet };
  }, [pointer, hand, steps, upTo, sheet, room]);
}

/** Draws drafts as they lie on the table: with the red pencil over them, and what can be held. */
interface Scenes {
  readonly still: (draft: Draft) => Scene;
  /** While something is dragged the sheet reaches as far as before: what is drawn to its edge would else go along with each move. */
  readonly moving: (draft: Draft, home: Box) => Scene;
}

function useScenes(inputs: SheetInputs, shown: (name: Name) => boolean): Scenes {
  const { exercise, room, say, bench, marking } = inputs;
  const { marked, feedback, showsRight } = marking;
  const { unit } = say.reader;
  // With a tool in hand marks are pointed at, not held.
  const free = bench.hand === null;
  const before = useRef<Scene | null>(null);
  return useMemo(() => {
    const wrong = marked && showsRight ? targetsBy(marked.grade, 'wrong') : [];
    const red = !marked || feedback === 'verdict' ? noPencil : redPencil(marked.grade.checks, new Set(wrong));
    const moving = (draft: Draft, home: Box): Scene => {
      const sheet = sheetOf(draft, room);
      const right = wrong.length > 0 ? rightPlaces(exercise, room, sheet, wrong) : [];
      const drawing = pictureOf({ sheet, givens: room.givens, shows: exercise.shows, box: home, unit, red, right });
      before.current = steadyScene({ sheet, drawing, home, grips: free ? gripsOf(draft, sheet) : [] }, before.current);
      return before.current;
    };
    const still = (draft: Draft): Scene => {
      const home = homeOf(room.givens, sheetOf(draft, room), shown);
      // The very box of before, where it is the same: what is drawn in it is then known again.
      return moving(draft, before.current ? steady(home, before.current.home) : home);
    };
    return { still, moving };
  }, [exercise, room, shown, unit, marked, feedback, showsRight, free]);
}

/** What pointing at the sheet does. */
function pointingOn({ room, bench, dispatch, say, speak }: SheetInputs, sheet: Sheet, shown: (name: Name) => boolean) {
  const { hand, steps, upTo } = bench;
  const { unit } = say.reader;
  return {
    read: (p: Point, radius: number) =>
      hand ? pointAt(hand, { sheet, shown, radius, draft: { steps, upTo }, room, unit }, p) : null,
    onPoint: (to: Pointed): void => {
      for (const { field, value } of to.also ? [to, to.also] : [to]) dispatch({ do: 'fill', field, value });
      if (to.caught.length > 0) speak(say('table.pointed', { what: { namedAll: to.caught } }));
    },
    where: (p: Point) => say.message(sayWhere('', p, { ...sheet, shapes: new Map() })),
    called: (names: readonly Name[]) => say('table.label', { name: { namedAll: names } }),
  };
}

/** What dragging on the sheet does, and nudging by keys, which come a step at a time. */
function draggingOn({ bench: { steps, upTo }, dispatch, motion }: SheetInputs, scene: Scene, scenes: Scenes) {
  const last = () => motion.now() ?? { draft: { steps, upTo }, scene };
  return {
    onDrag: (held: Held, to: Point): void => {
      const { draft, scene } = last();
      const move = dragged(held, to, draft.steps, scene.sheet);
      const next = move && moved(draft, move);
      if (next) motion.go({ draft: next, move, scene: scenes.moving(next, scene.home) });
    },
    onNudge: (held: Held, to: Point): void => {
      const { draft, scene } = last();
      const move = dragged(held, to, draft.steps, scene.sheet);
      if (move) dispatch(move);
    },
    onLetGo: (): void => dispatch({ do: 'let-go' }),
  };
}

/** The same answer for what was asked last: two parts of the table ask at each move. */
function keepLast<Asked, Given>(of: (asked: Asked) => Given): (asked: Asked) => Given {
  let last: { readonly asked: Asked; readonly given: Given } | null = null;
  return (asked) => {
    if (last === null || last.asked !== asked) last = { asked, given: of(asked) };
    return last.given;
  };
}
