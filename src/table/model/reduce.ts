import { replay } from '../../drafting/replay.ts';
import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { type Message, message } from '../../words/message.ts';
import { type About, sameOf, withName } from './about.ts';
import type { Action } from './action.ts';
import { type Bench, type Draft, emptyBench, type Room, type ToolId, type Turn } from './bench.ts';
import { clear, fill, pickUp, stepOf, turnOver } from './hand.ts';
import { type Move, moved } from './moved.ts';
import { nameTrouble } from './name-trouble.ts';
import { sayMade, sayMoved } from './say-change.ts';
import { amend, answer, erase, insert, rename } from './steps.ts';
import { toolFor } from './tools.ts';

/** How many changes can be undone. */
const KEPT = 200;

/** The bench after an action. Pure; an action that makes no sense where the bench stands leaves it as it is. */
export function reduce(bench: Bench, action: Action, room: Room): Bench {
  const next = carryOut(bench, action, room);
  // A note is made on the record by itself, also in the middle of a drag: the drag goes on.
  const keeps = action.do === 'move' || action.do === 'bend' || action.do === 'note';
  return keeps || next.dragging === null ? next : { ...next, dragging: null };
}

function carryOut(bench: Bench, action: Action, room: Room): Bench {
  switch (action.do) {
    case 'take':
      return take(bench, action.tool);
    case 'put-down':
      return bench.hand ? { ...bench, hand: null } : bench;
    case 'turn-to':
    case 'fill':
    case 'clear':
    case 'call':
      return inHand(bench, action);
    case 'draw':
      return drawStep(bench, room);
    case 'undo':
      return undo(bench);
    case 'redo':
      return redo(bench);
    case 'go':
      return goTo(bench, action.upTo);
    case 'whole':
      return { ...bench, upTo: bench.steps.length, hand: null };
    case 'open':
      return keep(
        bench,
        { steps: action.steps, upTo: action.steps.length },
        null,
        withName(action.about, bench.about.student),
      );
    case 'lay':
      return layKept(bench, action);
    case 'order':
      return keep(bench, bench, null, { setting: action.setting });
    case 'note':
      return { ...bench, about: { ...bench.about, ...action.about } };
    case 'clear-sheet':
      return keep(bench, { steps: [], upTo: 0 }, message('table.cleared'));
    case 'let-go':
      return bench;
    default:
      return onStep(bench, action, room);
  }
}

function layKept({ about }: Bench, kept: Extract<Action, { do: 'lay' }>): Bench {
  return { ...emptyBench(withName(kept.about, about.student)), steps: kept.steps, upTo: kept.upTo };
}

function take(bench: Bench, tool: ToolId): Bench {
  const { hand } = bench;
  const sameTool = hand !== null && toolFor(hand.tool) === toolFor(tool);
  return { ...bench, hand: sameTool && hand ? turnOver(hand, tool) : pickUp(tool) };
}

type HandAction = Extract<Action, { do: 'turn-to' | 'fill' | 'clear' | 'call' }>;

function inHand(bench: Bench, action: HandAction): Bench {
  const { hand } = bench;
  if (!hand) return bench;
  if (action.do === 'fill') return { ...bench, hand: fill(hand, action.field, action.value) };
  if (action.do === 'clear') return { ...bench, hand: clear(hand, action.field) };
  if (action.do === 'call') return { ...bench, hand: { ...hand, answers: action.target } };
  return { ...bench, hand: { ...hand, at: action.field } };
}

function drawStep(bench: Bench, room: Room): Bench {
  const { hand } = bench;
  if (!hand) return bench;
  const before = sheetOf(bench, room);
  const step = stepOf(hand, before, new Set(bench.steps.map(({ name }) => name)));
  if (!step) return bench;
  const draft = insert(bench, step);
  const sheet = sheetOf(draft, room);
  const at = draft.upTo - 1;
  const problem = sheet.problems.find((one) => one.step === at);
  const said = problem ? message('table.not-made', { why: { sentence: problem.message } }) : sayMade(step, sheet);
  return { ...keep(bench, draft, said), hand: null };
}

type StepAction = Extract<Action, { do: 'erase' | 'amend' | 'rename' | 'answer' | 'move' | 'bend' }>;

function onStep(bench: Bench, action: StepAction, room: Room): Bench {
  if (action.do === 'move' || action.do === 'bend') return drag(bench, action, room);
  const step = bench.steps[action.index];
  if (!step) return bench;
  const name = { named: step.name };
  if (action.do === 'erase') return keep(bench, erase(bench, action.index), message('table.erased', { name }));
  if (action.do === 'rename') return giveName(bench, action.index, action.name, room);
  if (action.do === 'answer') return giveAnswer(bench, action.index, action.target, step);
  // Is it what stands there already?
  if (same(step[action.field as keyof Step], action.value)) return bench;
  const draft = amend(bench, action.index, action.field, action.value);
  return keep(bench, draft, message('table.amended', { name, problems: sheetOf(draft, room).problems.length }));
}

function same(now: unknown, next: unknown): boolean {
  return JSON.stringify(now ?? null) === JSON.stringify(next);
}

function giveName(bench: Bench, index: number, name: string, room: Room): Bench {
  const step = bench.steps[index] as Step;
  if (step.name === name) return bench;
  const trouble = nameTrouble(name, bench.steps, room.givens);
  if (trouble) return speak(bench, trouble);
  return keep(
    bench,
    rename(bench, index, name),
    message('table.renamed', { was: { named: step.name }, name: { named: name } }),
  );
}

function giveAnswer(bench: Bench, index: number, target: Name | null, { name }: Step): Bench {
  const said =
    target === null
      ? message('table.answers-none', { name: { named: name } })
      : message('table.answers-target', { name: { named: name }, target: { named: target } });
  return keep(bench, answer(bench, index, target), said);
}

/** Moves a free mark or bends a curve. The whole drag is one change to undo. */
function drag(bench: Bench, move: Move, room: Room): Bench {
  const draft = moved(bench, move);
  if (draft === null) return bench;
  const going = bench.dragging === move.name;
  const said = sayMoved(move.name, sheetOf(draft, room));
  const next = going ? speak({ ...bench, ...draft, future: [] }, said) : keep(bench, draft, said);
  return { ...next, dragging: move.name };
}

function goTo(bench: Bench, upTo: number): Bench {
  const place = Math.max(0, Math.min(bench.steps.length, upTo));
  if (place === bench.upTo) return bench;
  return speak({ ...bench, upTo: place }, message('table.stands-at', { step: place, of: bench.steps.length }));
}

function undo(bench: Bench): Bench {
  const before = bench.past.at(-1);
  if (!before) return bench;
  const future = [turnFrom(bench, before.about), ...bench.future];
  return speak(
    { ...turnTo(bench, before), past: bench.past.slice(0, -1), future },
    message('table.undone', { of: before.steps.length }),
  );
}

function redo(bench: Bench): Bench {
  const [after, ...future] = bench.future;
  if (!after) return bench;
  const past = [...bench.past, turnFrom(bench, after.about)];
  return speak({ ...turnTo(bench, after), past, future }, message('table.redone', { of: after.steps.length }));
}

/** Makes a change that can be undone, also of what is said about the draft. */
function keep(bench: Bench, { steps, upTo }: Draft, said: Message | null, about: Partial<About> = {}): Bench {
  const past = [...bench.past, turnFrom(bench, about)].slice(-KEPT);
  return speak({ ...turnTo(bench, { steps, upTo, about }), past, future: [] }, said);
}

/** The draft as it stands, to come back to from a change that touches `about`. */
function turnFrom(bench: Bench, about: Partial<About>): Turn {
  return { steps: bench.steps, upTo: bench.upTo, about: sameOf(about, bench.about) };
}

function turnTo(bench: Bench, { steps, upTo, about }: Turn): Bench {
  return { ...bench, steps, upTo, about: { ...bench.about, ...about } };
}

function speak(bench: Bench, said: Message | null): Bench {
  return { ...bench, said, turn: bench.turn + 1 };
}

/** The sheet of each list of steps as it was asked for last: a move is drawn, and spoken of. */
const sheets = new WeakMap<
  readonly Step[],
  { readonly upTo: number; readonly givens: Givens; readonly sheet: Sheet }
>();

/** The sheet as far as one has gone in the working. */
export function sheetOf({ steps, upTo }: Draft, { givens }: Room): Sheet {
  const last = sheets.get(steps);
  if (last?.upTo === upTo && last.givens === givens) return last.sheet;
  const sheet = replay(givens, steps.slice(0, upTo));
  sheets.set(steps, { upTo, givens, sheet });
  return sheet;
}
