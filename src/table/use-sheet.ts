import { useLayoutEffect, useMemo } from 'preact/hooks';
import type { Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Bench, Room } from './model/bench.ts';
import { dragged, gripsOf, type Held } from './model/grips.ts';
import { pictureOf } from './model/picture.ts';
import { type Pointed, pointAt, takenUp } from './model/point-at.ts';
import { type Preview, previewOf } from './model/preview.ts';
import { noPencil, redPencil } from './model/red-pencil.ts';
import { sheetOf } from './model/reduce.ts';
import { rightPlaces } from './model/right-places.ts';
import { sayWhere } from './model/say-change.ts';
import { homeOf, shownOn } from './model/sheet-box.ts';
import type { Looks } from './parts/Ahead.tsx';
import type { Say } from './say.ts';
import { UnderPointer } from './under-pointer.ts';
import type { Dispatch } from './use-bench.ts';
import { type Marking, targetsBy } from './use-marking.ts';
import { useSteady } from './use-steady.ts';

interface SheetInputs {
  readonly exercise: Exercise;
  readonly room: Room;
  readonly bench: Bench;
  /** Whether something dragged on the sheet is moving at this moment. */
  readonly moving: boolean;
  readonly dispatch: Dispatch;
  readonly say: Say;
  readonly speak: (text: string) => void;
  readonly marking: Marking;
  readonly toFirst: number;
}

/** The sheet as it looks and as it is pointed at, and the sentence beside it. */
export function useSheet(inputs: SheetInputs) {
  const { exercise, room, bench, dispatch, say, speak, toFirst } = inputs;
  const pointer = useMemo(() => new UnderPointer(), []);
  const { hand, steps, upTo } = bench;
  const sheet = useMemo(() => sheetOf({ steps, upTo }, room), [steps, upTo, room]);
  const shown = useMemo(() => shownOn(exercise.shows, room.givens), [exercise, room]);
  const looks = useLooks(pointer, inputs, sheet);
  const { drawing, home } = usePicture(inputs, sheet, shown);
  // With a tool in hand marks are pointed at, not held.
  const free = hand === null;
  const grips = useSteady(useMemo(() => (free ? gripsOf({ steps, upTo }, sheet) : []), [free, steps, upTo, sheet]));
  const hands = handsOn({ ...inputs, sheet, shown });
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
      holding: hand !== null,
      dragging: bench.dragging !== null,
      moving: inputs.moving,
      onHover: pointer.point,
      onSay: speak,
      ...hands,
    },
    sentenceProps: {
      hand,
      sheet,
      looks,
      targets: exercise.targets,
      shown,
      say,
      dispatch,
      toFirst,
      onDrawn: () => pointer.point(null),
    },
  };
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

/** The picture on the table: the draft and the red pencil. */
function usePicture({ exercise, room, say, marking }: SheetInputs, sheet: Sheet, shown: (name: Name) => boolean) {
  const { marked, feedback, showsRight } = marking;
  const { unit } = say.reader;
  const home = useSteady(useMemo(() => homeOf(room.givens, sheet, shown), [room, sheet, shown]));
  const red = useMemo(() => {
    if (!marked || feedback === 'verdict') return noPencil;
    return redPencil(marked.grade.checks, new Set(showsRight ? targetsBy(marked.grade, 'wrong') : []));
  }, [marked, feedback, showsRight]);
  const right = useMemo(
    () => (marked && showsRight ? rightPlaces(exercise, room, sheet, targetsBy(marked.grade, 'wrong')) : []),
    [marked, showsRight, exercise, room, sheet],
  );
  const drawing = useMemo(
    () =>
      pictureOf({
        sheet,
        givens: room.givens,
        shows: exercise.shows,
        box: home,
        unit,
        red,
        right,
      }),
    [sheet, room, exercise, home, unit, red, right],
  );
  return { drawing: useSteady(drawing), home };
}

interface Hands extends SheetInputs {
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
}

/** What pointing at the sheet and dragging on it do. */
function handsOn({ room, bench, dispatch, say, speak, sheet, shown }: Hands) {
  const { hand, steps, upTo } = bench;
  const { unit } = say.reader;
  return {
    read: (p: Point, radius: number) =>
      hand ? pointAt(hand, { sheet, shown, radius, draft: { steps, upTo }, room, unit }, p) : null,
    onPoint: (to: Pointed): void => {
      for (const { field, value } of to.also ? [to, to.also] : [to]) dispatch({ do: 'fill', field, value });
      if (to.caught.length > 0) speak(say('table.pointed', { what: { namedAll: to.caught } }));
    },
    onDrag: (held: Held, to: Point): void => {
      const action = dragged(held, to, steps, sheet);
      if (action) dispatch(action);
    },
    onLetGo: (): void => dispatch({ do: 'let-go' }),
    where: (p: Point) => say.message(sayWhere('', p, { ...sheet, shapes: new Map() })),
    called: (names: readonly Name[]) => say('table.label', { name: { namedAll: names } }),
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
