import type { ShapeKind } from '../drafting/shape.ts';
import type { Givens, Problem } from '../drafting/sheet.ts';
import { type Message, message, type Value, written } from '../words/message.ts';
import type { Slip } from './bench.ts';
import { shareOf } from './bounds.ts';
import { figureOf } from './figure-of.ts';
import { fillers } from './fillers.ts';
import type { JudgedCheck, JudgedTarget } from './judge.ts';
import type { Status, TargetReport } from './result.ts';
import { verdictOn } from './verdict.ts';
import { whatIsOff } from './what.ts';
import { worthSaying } from './worth-saying.ts';

/** What a report is written from. */
export interface Finding {
  readonly judged: JudgedTarget;
  /** What was done wrong, where it is known; null where it is not, or nothing is wrong. */
  readonly slip: Slip | null;
  /** Earlier targets that are off and moved what was expected here. */
  readonly earlier: readonly JudgedTarget[];
  /** Earlier targets that are right and that this one was judged from. */
  readonly sound: readonly JudgedTarget[];
}

const worse: Readonly<Record<Status, number>> = { within: 0, near: 1, beyond: 2, missing: 3 };

/** What is said of a target, a paragraph for each of its faults: what, by how much and which way; why it shows on the body; what to do; what it was judged from. `unclaimed` is the step, from 0, that makes a right answer where none is pointed out. */
export function reportOn(finding: Finding, givens: Givens, unclaimed: number | null): TargetReport {
  const { judged } = finding;
  const status = judged.checks.reduce<Status>(
    (sum, { status: one }) => (worse[one] > worse[sum] ? one : sum),
    'within',
  );
  const notMade = judged.answer.found === 'not-made' ? judged.answer.problem.step : null;
  const paragraphs =
    unclaimed === null ? paragraphsFor(finding, status, givens) : [[unclaimedSentence(judged, unclaimed)]];
  const verdict = verdictOn(judged.checks.map(({ status: one, check }) => ({ status: one, of: check.marks })));
  return { target: judged.target.name, status, verdict, notMade, sentences: paragraphs.flat(), paragraphs };
}

function paragraphsFor(finding: Finding, status: Status, givens: Givens): readonly (readonly Message[])[] {
  const { judged, slip, earlier } = finding;
  const target = { named: judged.target.name };
  if (status === 'within') return [[rightSentence(finding)]];
  if (judged.answer.found === 'nothing')
    return [[message('grader.missing', { target }), ...mends(judged.checks, givens)]];
  if (judged.answer.found === 'not-made') return [notMade(target, judged.answer.problem)];
  if (judged.answer.found === 'wrong-kind') {
    const found = { said: kindWord(judged.answer.kind) };
    const wanted = { said: kindWord(judged.target.makes) };
    return [[message('grader.wrong-kind', { target, found, wanted }), ...mends(judged.checks, givens)]];
  }
  const about = slip === null ? faults(judged, givens) : [[...slip.says, ...judged.checks.flatMap(closeTo)]];
  const from = earlier.length > 0 ? 'grader.judged-from-slip' : 'grader.judged-from-right';
  const origin = earlier.length > 0 ? earlier : finding.sound;
  if (origin.length === 0) return about;
  const judgedFrom = message(from, { judged: namesOf(origin), count: origin.length });
  // What goes for one fault stands beside it, what goes for several behind them.
  return about.length === 1 ? [[...about.flat(), judgedFrom]] : [...about, [judgedFrom]];
}

function unclaimedSentence({ target }: JudgedTarget, step: number): Message {
  return message('grader.unclaimed', { target: { named: target.name }, step: step + 1 });
}

/** Pointed out, but its step came to nothing; where the step itself is at fault, and not an earlier one, that is said. */
function notMade(target: Value, { step, message: said }: Problem): readonly Message[] {
  const values = { target, step: step + 1, problem: { sentence: said } };
  const earlier = 'key' in said && said.key === 'problem.not-there';
  return [message(earlier ? 'grader.not-made-yet' : 'grader.not-made', values)];
}

function rightSentence({ judged, earlier }: Finding): Message {
  const target = { named: judged.target.name };
  if (earlier.length > 0)
    return message('grader.right-judged', { target, judged: namesOf(earlier), count: earlier.length });
  const figure = figureOf(judged.checks);
  return figure === null
    ? message('grader.right', { target })
    : message('grader.right-figure', { target, figure: { said: figure } });
}

function namesOf(targets: readonly JudgedTarget[]): Value {
  return { namedAll: targets.map(({ target }) => target.name) };
}

function kindWord(kind: ShapeKind): Message {
  return message(`kind.${kind}`);
}

/** For every check that is off: what is off, why it shows on the body, what to do. What was said of one is not said of the next. */
function faults(judged: JudgedTarget, givens: Givens): readonly (readonly Message[])[] {
  const off = judged.checks.filter(({ status }) => status !== 'within');
  const seen = new Set<string>();
  return worthSaying(off)
    .map((check) => [
      whatIsOff(judged, check),
      written(check.check.why, fillers(check, givens)),
      written(check.check.mend, fillers(check, givens)),
      ...closeTo(check),
    ])
    .map((said) => once(said, seen))
    .filter(({ length }) => length > 0);
}

/** What a check that is nearly right still earns. */
function closeTo({ status, check }: JudgedCheck): readonly Message[] {
  return status === 'near' ? [message('grader.near', { marks: check.marks * shareOf(status), of: check.marks })] : [];
}

function mends(checks: readonly JudgedCheck[], givens: Givens): readonly Message[] {
  return once(checks.slice(0, 1).map(({ check }) => written(check.mend, fillers(null, givens))));
}

/** Two checks of one target often end in the same advice; it is given once. */
function once(messages: readonly Message[], seen: Set<string> = new Set()): readonly Message[] {
  return messages.filter((one) => {
    const id = 'text' in one ? one.text : `${one.key} ${JSON.stringify(one.values)}`;
    if (seen.has(id)) return false;
    seen.add(id);
    return true;
  });
}
