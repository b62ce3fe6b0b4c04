import { type Message, message } from '../words/message.ts';
import type { HalfStep } from './form.ts';
import { type Head, headOf, whyNotName } from './head.ts';
import { knownStep } from './known-step.ts';
import { DRAFT_WORK, STEP_WORK } from './limits.ts';
import { made } from './outcome.ts';
import { millimetres, type Quantity, radians } from './quantity.ts';
import { isRecord } from './record.ts';
import { carryOutOnce, type Done, memoryOf } from './remember.ts';
import type { Scope } from './scope.ts';
import type { Shape } from './shape.ts';
import type { Givens, Pins, Problem, Replayed } from './sheet.ts';
import type { Name, Step } from './step.ts';
import { wordOf } from './word-of.ts';

const noPins: Pins = new Map();

/**
 * Replays a draft: carries out its steps in order on what is given, and gives everything that has a name then.
 * A step that cannot be carried out makes a problem and no object; the others still stand. Nothing is thrown, whatever
 * the steps hold. A step that answers a pinned target makes the pinned shape, if it is of the kind the step makes,
 * under its own name and in place of its own. A step claims its target even when it cannot be carried out. A step that
 * would cost more than is left of the draft's work is a problem too.
 */
export function replay(givens: Givens, steps: readonly Step[], pins: Pins = noPins): Replayed {
  const shapes = new Map(givens.shapes);
  const measures = new Map(givens.measures);
  const answers = new Map<Name, Name>();
  const problems: Problem[] = [];
  // The names of steps that made nothing are taken, too.
  const lost = new Set<Name>();
  const memory = memoryOf(givens);
  let index = 0;
  const scope: Scope = { shapes, measures, absent: (missing) => whyAbsent(missing, steps, index, problems) };
  const whyTaken = (name: Name): Message | null => {
    const taken = shapes.has(name) || measures.has(name) || lost.has(name);
    return taken ? whyNotName(name, givens, namesBefore(steps, index)) : null;
  };
  let work = 0;
  for (; index < steps.length; index++) {
    const head = headOf(steps[index], whyTaken);
    if (!head.ok) {
      problems.push({ step: index, name: nameOf(steps[index]), field: head.field, message: head.message });
      continue;
    }
    const { name, step } = head.value;
    const target = step.answers;
    if (typeof target === 'string') answers.set(target, name);
    const limit = Math.max(DRAFT_WORK - work, STEP_WORK);
    const done = pinnedShape(head.value, shapes, pins) ?? carryOutOnce(head.value, scope, memory, limit);
    const { outcome } = done;
    work += done.work;
    if (outcome.ok) lay(name, outcome.value, shapes, measures);
    else {
      lost.add(name);
      problems.push({ step: index, name, field: outcome.field, message: outcome.message });
    }
  }
  return { shapes, measures, answers, problems, work };
}

/** The names that were taken before a step, each with the first step that could take it. */
function namesBefore(steps: readonly unknown[], index: number): ReadonlyMap<Name, number> {
  const earlier = new Map<Name, number>();
  for (let at = 0; at < index; at++) {
    const step = steps[at];
    if (!isRecord(step)) continue;
    const { name, nameable, form } = knownStep(step as HalfStep);
    if (nameable && form !== null && !earlier.has(name)) earlier.set(name, at);
  }
  return earlier;
}

/** Lays a shape on a sheet under its name, and its measure, where it has one. */
export function lay(name: Name, shape: Shape, shapes: Map<Name, Shape>, measures: Map<Name, Quantity>): void {
  shapes.set(name, shape);
  if (shape.kind === 'length') measures.set(name, millimetres(shape.length));
  if (shape.kind === 'angle') measures.set(name, radians(shape.angle));
}

/** The pinned shape a step is to make in place of its own; null when none is pinned, or one of another kind. */
function pinnedShape({ step, form }: Head, shapes: ReadonlyMap<Name, Shape>, pins: Pins): Done | null {
  const pin = pins.size === 0 ? undefined : pins.get(step.answers as Name);
  if (!pin) return null;
  const kind = form.makes === 'same' ? shapes.get(step.what as Name)?.kind : form.makes;
  return kind === undefined || kind === pin.kind ? { outcome: made(pin), work: 1 } : null;
}

/** Why a name is not on the sheet at a step, from where the draft makes it; null when it never does. Of steps that fall one with the other, the first is named: it alone has to be mended. */
function whyAbsent(name: Name, steps: readonly unknown[], index: number, problems: readonly Problem[]): Message | null {
  const at = steps.findIndex((step) => nameIn(step) === name);
  if (at < 0) return null;
  if (at === index) return message('problem.itself', { name: { named: name } });
  if (at > index) return message('problem.made-later', { name: { named: name }, step: at + 1 });
  return message('problem.not-there', { name: { named: name }, step: firstToFall(at, problems) });
}

/** The step, from 1, that the failing of another one goes back to: itself, or the one that its own words name. */
function firstToFall(at: number, problems: readonly Problem[]): number {
  const said = problems.find(({ step }) => step === at)?.message;
  const named = said && 'key' in said && said.key === 'problem.not-there' ? said.values['step'] : null;
  return typeof named === 'number' ? named : at + 1;
}

const nameOf = (step: unknown): Name => wordOf(nameIn(step));

function nameIn(step: unknown): unknown {
  const { name } = isRecord(step) ? step : {};
  return name;
}
