import { ancestorsOf } from '../drafting/dependencies.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Name, Step } from '../drafting/step.ts';
import { differ } from './carried.ts';
import type { Drawn, Tries } from './drawn.ts';
import type { Exercise } from './exercise.ts';
import { isRightAnswer, type JudgedTarget, type Ruler } from './judge.ts';
import { type Named, shapeNamed } from './measures/lookup.ts';
import { referenceStandingOn } from './plan/reference-ground.ts';

/** The ground a target stands on where what it shares with an earlier one is held as the learner made it. */
export interface SharedGround {
  readonly right: Shape;
  readonly reference: Named;
}

/**
 * Where one wrong thing is drawn on to two targets and is none itself, as a gorge ruled from the wrong mark, both are off. It is
 * found by trying: a thing that both were made from is held in place of one of the reference's, and where the earlier target is
 * right from there, that is where the slip was made. From there the later one is judged too.
 */
export function* sharedGrounds(
  slip: JudgedTarget,
  later: JudgedTarget,
  ruler: Ruler,
  drawn: Drawn,
  tries: Tries,
): Generator<SharedGround> {
  for (const thing of sharedThings(slip, later, ruler, drawn)) {
    for (const name of placesFor(thing, slip, ruler.exercise)) {
      if (tries.left <= 0) return;
      tries.left -= 1;
      const stoodOn = new Map([[name, thing.shape]]);
      if (!explains(slip, stoodOn, ruler)) continue;
      yield* groundsOn(later, stoodOn, thing, ruler, tries);
      // Where the slip was made is found; in another place the same thing would say no more.
      break;
    }
  }
}

interface Thing {
  readonly step: Step;
  readonly shape: Shape;
}

/** What the learner made both answers from, the last first, and first of all what the reference has nowhere; without answers, which are held by themselves. */
function sharedThings(
  slip: JudgedTarget,
  later: JudgedTarget,
  { exercise }: Ruler,
  { steps, sheet }: Drawn,
): readonly Thing[] {
  if (slip.answer.found !== 'right-kind' || later.answer.found !== 'right-kind') return [];
  const makers = new Set(ancestorsOf(steps, slip.answer.object));
  const shared = ancestorsOf(steps, later.answer.object).filter((index) => makers.has(index));
  const right = exercise.reference.flatMap(({ name }) => slip.reference.shapes.get(name) ?? []);
  const isRightSomewhere = ({ shape }: Thing): boolean =>
    right.some((one) => one.kind === shape.kind && !differ(one, shape));
  const things = shared.toReversed().flatMap((index): Thing[] => {
    const step = steps[index] as Step;
    const shape = sheet.shapes.get(step.name);
    return shape === undefined || step.answers !== undefined ? [] : [{ step, shape }];
  });
  const { strange = [], known = [] } = Object.groupBy(things, (thing) =>
    isRightSomewhere(thing) ? 'known' : 'strange',
  );
  return [...strange, ...known];
}

/** The steps of the reference, on the way to a target, in whose place a thing may stand: those the learner calls the same, and made with the same tool, first. */
function placesFor({ step, shape }: Thing, { target, reference }: JudgedTarget, exercise: Exercise): readonly Name[] {
  const unlike = (one: Step): number => (one.name === step.name ? 0 : one.verb === step.verb ? 1 : 2);
  return wayTo(target.name, exercise)
    .filter(({ name }) => {
      const own = reference.shapes.get(name);
      return own?.kind === shape.kind && differ(own, shape);
    })
    .toSorted((a, b) => unlike(a) - unlike(b))
    .map(({ name }) => name);
}

/** The steps that the reference makes a target from and that answer none. */
function wayTo(target: Name, { reference }: Exercise): readonly Step[] {
  const answering = reference.find(({ answers }) => answers === target);
  if (answering === undefined) return [];
  return ancestorsOf(reference, answering.name)
    .map((index) => reference[index] as Step)
    .filter(({ answers }) => answers === undefined);
}

/** Whether a target is right as seen from there. */
function explains({ target, answer, pins }: JudgedTarget, stoodOn: ReadonlyMap<Name, Shape>, ruler: Ruler): boolean {
  const reference = referenceStandingOn(ruler.exercise, ruler.givens, pins, stoodOn);
  const right = shapeNamed(reference, target.name);
  return right !== null && isRightAnswer(ruler, target, answer, { right, reference });
}

/** The later target from there: with the thing in the one place, and in another of its own besides. */
function* groundsOn(
  { target, pins, reference: stood }: JudgedTarget,
  stoodOn: ReadonlyMap<Name, Shape>,
  { shape }: Thing,
  { exercise, givens }: Ruler,
  tries: Tries,
): Generator<SharedGround> {
  const own = wayTo(target.name, exercise).filter(
    ({ name }) => !stoodOn.has(name) && stood.shapes.get(name)?.kind === shape.kind,
  );
  for (const place of [null, ...own.map(({ name }) => name)]) {
    if (tries.left <= 0) return;
    tries.left -= 1;
    const held = place === null ? stoodOn : new Map(stoodOn).set(place, shape);
    const reference = referenceStandingOn(exercise, givens, pins, held);
    const right = shapeNamed(reference, target.name);
    if (right !== null) yield { right, reference };
  }
}
