import { useCallback, useMemo, useState } from 'preact/hooks';
import type { Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Bench, Room } from './model/bench.ts';
import { dragged, gripsOf, type Held } from './model/grips.ts';
import { pictureOf } from './model/picture.ts';
import { type Pointed, pointAt, takenUp } from './model/point-at.ts';
import { drawnOf, type Preview, previewOf } from './model/preview.ts';
import { noPencil, redPencil } from './model/red-pencil.ts';
import { sheetOf } from './model/reduce.ts';
import { rightPlaces } from './model/right-places.ts';
import { sayWhere } from './model/say-change.ts';
import { homeOf, shownOn } from './model/sheet-box.ts';
import type { Say } from './say.ts';
import type { Dispatch } from './use-bench.ts';
import { type Marking, targetsBy } from './use-marking.ts';

interface SheetInputs {
  readonly exercise: Exercise;
  readonly room: Room;
  readonly bench: Bench;
  readonly dispatch: Dispatch;
  readonly say: Say;
  readonly speak: (text: string) => void;
  readonly marking: Marking;
  readonly toFirst: number;
}

/** The sheet as it looks and as it is pointed at, and the sentence beside it. */
export function useSheet(inputs: SheetInputs) {
  const { exercise, room, bench, dispatch, say, speak, toFirst } = inputs;
  const [lit, setLit] = useState<readonly Name[]>([]);
  const [pointed, setPointed] = useState<Pointed | null>(null);
  const { hand, steps, upTo } = bench;
  const sheet = useMemo(() => sheetOf({ steps, upTo }, room), [steps, upTo, room]);
  const shown = useMemo(() => shownOn(exercise.shows, room.givens), [exercise, room]);
  // What the step would make if the pointer pressed here, or as far as the blanks are filled.
  const tried = useMemo(() => (hand && pointed ? takenUp(hand, pointed) : hand), [hand, pointed]);
  const ahead = useMemo(() => previewOf({ steps, upTo }, tried, sheet, room), [steps, upTo, tried, sheet, room]);
  const { drawing, home } = usePicture(inputs, { sheet, shown, lit, ahead });
  // With a tool in hand marks are pointed at, not held.
  const free = hand === null;
  const grips = useMemo(() => (free ? gripsOf({ steps, upTo }, sheet) : []), [free, steps, upTo, sheet]);
  const hover = (to: Pointed | null): void => {
    setPointed(to);
    setLit((before) => (to ? to.caught : before.length > 0 ? [] : before));
  };
  const light = useCallback((name: Name | null): void => setLit(name === null ? [] : [name]), []);
  const hands = handsOn({ ...inputs, sheet, shown, hover });
  return {
    sheet,
    shown,
    light,
    sheetProps: {
      id: `sheet-${exercise.id}`,
      drawing,
      home,
      grips,
      say,
      holding: hand !== null,
      onSay: speak,
      ...hands,
    },
    sentenceProps: {
      hand,
      sheet,
      preview: ahead,
      targets: exercise.targets,
      shown,
      say,
      dispatch,
      toFirst,
      onDrawn: () => setPointed(null),
    },
  };
}

interface Looks {
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
  readonly lit: readonly Name[];
  readonly ahead: Preview;
}

/** The picture on the table: the draft, what is ahead, and the red pencil. */
function usePicture({ exercise, room, say, marking }: SheetInputs, { sheet, shown, lit, ahead }: Looks) {
  const { marked, feedback, showsRight } = marking;
  const { unit } = say.reader;
  const home = useMemo(() => homeOf(room.givens, sheet, shown), [room, sheet, shown]);
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
        lit,
        ahead: drawnOf(ahead),
        red,
        right,
      }),
    [sheet, room, exercise, home, unit, lit, ahead, red, right],
  );
  return { drawing, home };
}

interface Hands extends SheetInputs {
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
  readonly hover: (to: Pointed | null) => void;
}

/** What pointing at the sheet and dragging on it do. */
function handsOn({ room, bench, dispatch, say, speak, sheet, shown, hover }: Hands) {
  const { hand, steps, upTo } = bench;
  const { unit } = say.reader;
  return {
    read: (p: Point, radius: number) =>
      hand ? pointAt(hand, { sheet, shown, radius, draft: { steps, upTo }, room, unit }, p) : null,
    onPoint: (to: Pointed): void => {
      for (const { field, value } of to.also ? [to, to.also] : [to]) dispatch({ do: 'fill', field, value });
      if (to.caught.length > 0) speak(say('table.pointed', { what: { namedAll: to.caught } }));
    },
    onHover: hover,
    onDrag: (held: Held, to: Point): void => {
      const action = dragged(held, to, steps, sheet);
      if (action) dispatch(action);
    },
    onLetGo: (): void => dispatch({ do: 'let-go' }),
    where: (p: Point) => say.message(sayWhere('', p, { ...sheet, shapes: new Map() })),
    called: (names: readonly Name[]) => say('table.label', { name: { namedAll: names } }),
  };
}
