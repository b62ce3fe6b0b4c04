import { useMemo, useState } from 'preact/hooks';
import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import type { Exercise } from '../grader/exercise.ts';
import { fitBox } from './drawing/draw.ts';
import type { Bench, Room } from './model/bench.ts';
import { dragged, gripsOf, type Held } from './model/grips.ts';
import { fill } from './model/hand.ts';
import { pictureOf } from './model/picture.ts';
import { type Pointed, pointAt } from './model/point-at.ts';
import { drawnOf, previewOf } from './model/preview.ts';
import { noPencil, redPencil } from './model/red-pencil.ts';
import { sheetOf } from './model/reduce.ts';
import { rightPlaces } from './model/right-places.ts';
import { sayWhere } from './model/say-change.ts';
import { bothBoxes, sheetBox } from './model/sheet-box.ts';
import type { Say } from './say.ts';
import type { Dispatch } from './use-bench.ts';
import type { Marked } from './use-marking.ts';

interface SheetInputs {
  readonly exercise: Exercise;
  readonly room: Room;
  readonly bench: Bench;
  readonly dispatch: Dispatch;
  readonly say: Say;
  readonly speak: (text: string) => void;
  readonly marked: Marked | null;
  readonly showsRight: boolean;
  readonly toFirst: number;
}

/** The sheet as it looks and as it is pointed at, and the sentence beside it. */
export function useSheet({ exercise, room, bench, dispatch, say, speak, marked, showsRight, toFirst }: SheetInputs) {
  const [lit, setLit] = useState<readonly Name[]>([]);
  const [pointed, setPointed] = useState<Pointed | null>(null);
  const { hand, steps, upTo } = bench;
  const { unit } = say.reader;
  const sheet = useMemo(() => sheetOf({ steps, upTo }, room), [steps, upTo, room]);
  const shown = useMemo(() => shownOn(exercise, room), [exercise, room]);
  // What the step would make if the pointer pressed here, or as far as the blanks are filled.
  const tried = hand && pointed ? fill(hand, pointed.field, pointed.value) : hand;
  const ahead = useMemo(() => previewOf({ steps, upTo }, tried, sheet, room), [steps, upTo, tried, sheet, room]);
  const home = useMemo(() => {
    const block = sheetBox(
      { shapes: room.givens.shapes, measures: room.givens.measures, answers: new Map(), problems: [] },
      shown,
    );
    return sheet.shapes.size === room.givens.shapes.size ? block : bothBoxes(block, fitBox(sheet, shown, []));
  }, [room, shown, sheet]);
  const pencil = useMemo(() => redPencilOf(marked, showsRight), [marked, showsRight]);
  const right = useMemo(
    () => (marked && showsRight ? rightPlaces(exercise, room, sheet, wrongTargets(marked)) : []),
    [marked, showsRight, exercise, room, sheet],
  );
  const drawing = useMemo(
    () =>
      pictureOf({
        sheet,
        room,
        shows: exercise.shows,
        box: home,
        unit,
        lit,
        ahead: drawnOf(ahead),
        red: pencil,
        right,
      }),
    [sheet, room, exercise, home, unit, lit, ahead, pencil, right],
  );
  const grips = useMemo(() => gripsOf({ steps, upTo }, sheet), [steps, upTo, sheet]);
  const light = (name: Name | null): void => setLit(name === null ? [] : [name]);

  const sheetProps = {
    id: `sheet-${exercise.id}`,
    drawing,
    home,
    grips,
    say,
    holding: hand !== null,
    read: (p: Point, radius: number) =>
      hand ? pointAt(hand, { sheet, shown, radius, draft: { steps, upTo }, room, unit }, p) : null,
    onPoint: (to: Pointed): void => {
      dispatch({ do: 'fill', field: to.field, value: to.value });
      if (to.caught.length > 0) speak(say('table.pointed', { what: { namedAll: to.caught } }));
    },
    onHover: (to: Pointed | null): void => {
      setPointed(to);
      setLit((before) => (to ? to.caught : before.length > 0 ? [] : before));
    },
    onDrag: (held: Held, to: Point): void => {
      const action = dragged(held, to, steps, sheet);
      if (action) dispatch(action);
    },
    onLetGo: (): void => dispatch({ do: 'let-go' }),
    onSay: speak,
    where: (p: Point) => say.message(sayWhere('', p, { ...sheet, shapes: new Map() })),
    called: (names: readonly Name[]) => say('table.label', { name: { namedAll: names } }),
  };
  const sentenceProps = {
    hand,
    sheet,
    preview: ahead,
    targets: exercise.targets,
    shown,
    say,
    dispatch,
    onLight: light,
    toFirst,
    onDrawn: (): void => setPointed(null),
  };
  return { sheet, shown, light, sheetProps, sentenceProps };
}

function shownOn(exercise: Exercise, room: Room): (name: Name) => boolean {
  const laid = new Set(exercise.shows);
  return (name) => !room.givens.shapes.has(name) || laid.has(name);
}

function redPencilOf(marked: Marked | null, showsRight: boolean) {
  if (!marked) return noPencil;
  return redPencil(marked.grade.checks, new Set(showsRight ? wrongTargets(marked) : []));
}

function wrongTargets({ grade }: Marked): readonly Name[] {
  return grade.reports.filter(({ status }) => status !== 'within').map(({ target }) => target);
}
