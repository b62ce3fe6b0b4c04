import { ancestorsOf } from '../drafting/dependencies.ts';
import { lazily } from '../drafting/lazily.ts';
import { DRAFT_WORK } from '../drafting/limits.ts';
import { replay } from '../drafting/replay.ts';
import type { Givens, Sheet } from '../drafting/sheet.ts';
import type { Name, Step } from '../drafting/step.ts';
import { metered } from '../geometry/work.ts';
import { type Message, message } from '../words/message.ts';
import { advice } from './advice.ts';
import type { Amendment } from './amendments.ts';
import { type Answer, answerTo } from './answer.ts';
import type { Bench, Slip } from './bench.ts';
import type { Exercise, Target } from './exercise.ts';
import { isRightAnswer, type JudgedTarget } from './judge.ts';
import { redrawn } from './plan/reference-ground.ts';
import { stepsOfOnesOwn } from './reference-deeds.ts';
import type { Strictness } from './tolerance.ts';
import { whatIsOff } from './what.ts';

/** What the learner drew with: what lay on the table, the steps, and the sheet they make. */
export interface Draft {
  readonly learner: Givens;
  readonly steps: readonly Step[];
  readonly sheet: Sheet & { readonly work: number };
  /** The places of the steps that the reference does not have, looked for when they are first asked for. */
  readonly own: () => readonly number[];
}

export function draftOf(exercise: Exercise, learner: Givens, steps: readonly Step[], sheet: Draft['sheet']): Draft {
  return { learner, steps, sheet, own: lazily(() => stepsOfOnesOwn(steps, exercise)) };
}

/** Of so many changed words at the most the draft is drawn again, and only where drawing it is cheap. */
const TRIED = 24;
const CHEAP = DRAFT_WORK / 100;

/** With its word changed an answer is right as exactly as anybody asks; one that then comes near by chance is not named. */
const SURE: Strictness = 'sample-room';

/**
 * What was done wrong in one word of the learner's own steps: with that word changed as `amendmentsOf` has it, and nothing
 * else, the answer is right. The steps are looked through from the answer back to the answers before it, which are told of
 * by themselves. Null where no such word is found.
 */
export function amendedOf(
  bench: Bench,
  judged: JudgedTarget,
  draft: Draft,
  amendmentsOf: (step: Step) => readonly Amendment[],
): Slip | null {
  const { steps, sheet } = draft;
  const at = steps.findLastIndex(({ answers }) => answers === judged.target.name);
  const answering = steps[at];
  if (answering === undefined || judged.right === null || sheet.work > CHEAP) return null;
  const suspects = suspectsIn(draft, amendmentsOf);
  if (suspects.length === 0) return null;
  const makers = ancestorsOf(steps, answering.name);
  const before = toldOf(bench, judged, steps);
  const changes = suspects.filter(({ index }) => makers.includes(index) && !before.has(index)).toReversed();
  const found = changes.slice(0, TRIED).find(({ index, amendment }) => {
    const changed = makers.map((one) => (one === index ? amendment.step : (steps[one] as Step)));
    return isRightWith(changed, bench, judged, draft);
  });
  return found === undefined ? null : amendedAt(found.index, found.amendment, bench, judged);
}

interface Suspect {
  readonly index: number;
  readonly amendment: Amendment;
}

/** What may be amended anywhere in a draft. What the reference does too is no slip. */
function suspectsIn({ steps, own }: Draft, amendmentsOf: (step: Step) => readonly Amendment[]): readonly Suspect[] {
  return own().flatMap((index) => amendmentsOf(steps[index] as Step).map((amendment) => ({ index, amendment })));
}

/** The steps that other answers, judged before this one, come from. */
function toldOf({ exercise }: Bench, { target }: JudgedTarget, steps: readonly Step[]): ReadonlySet<number> {
  const earlier = new Set<Name>(exercise.targets.slice(0, exercise.targets.indexOf(target)).map(({ name }) => name));
  const answers = steps.filter((step) => typeof step.answers === 'string' && earlier.has(step.answers));
  return new Set(answers.flatMap(({ name }) => ancestorsOf(steps, name)));
}

function isRightWith(steps: readonly Step[], bench: Bench, judged: JudgedTarget, draft: Draft): boolean {
  const { target, right, reference } = judged;
  const answer = answerFrom(steps, target, bench, draft);
  return isRightAnswer({ ...bench, strictness: SURE }, target, answer, { right, reference });
}

/** The answer that changed steps come to. Where all of the draft was carried out, they are drawn beside it as far as they are asked for. */
function answerFrom(
  steps: readonly Step[],
  target: Target,
  { exercise, givens }: Bench,
  { learner, sheet }: Draft,
): Answer {
  const planned = sheet.problems.length > 0 ? null : redrawn(exercise, givens, steps);
  const tried = planned && metered(DRAFT_WORK, () => answerTo(target, { ...planned, problems: [] }));
  return tried?.done ? tried.value : answerTo(target, replay(learner, steps));
}

/** How a length typed in the wrong unit is called among the misreadings. */
export const WRONG_UNIT = 'wrong-unit';

const ids = { unit: WRONG_UNIT, added: 'something-added', way: 'opposite-way' } as const;

function amendedAt(index: number, { kind, wrote, meant }: Amendment, bench: Bench, judged: JudgedTarget): Slip {
  const values = { target: { named: judged.target.name }, step: index + 1 };
  const says: Readonly<Record<Amendment['kind'], () => Message>> = {
    unit: () => message('grader.wrong-unit', { ...values, wrote, meant }),
    added: () => message('grader.added', { ...values, added: meant }),
    way: () => message('grader.wrong-way', { ...values, wrote: wayWords(wrote), meant: wayWords(meant) }),
  };
  const off = judged.checks.find(({ status }) => status !== 'within');
  const amount = off === undefined ? [] : [whatIsOff(judged, off)];
  return { id: ids[kind], says: [says[kind](), ...amount, ...advice(judged, bench.givens)] };
}

function wayWords(way: string): { readonly said: Message } {
  switch (way) {
    case 'left':
    case 'right':
    case 'up':
    case 'down':
      return { said: message(`way.${way}`) };
    default:
      return { said: message(way === 'clockwise' ? 'fill.clockwise' : 'fill.anticlockwise') };
  }
}
