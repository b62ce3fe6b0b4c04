import { DRAFT_WORK } from '../drafting/limits.ts';
import type { Pins } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import type { Drawn, Tries } from './drawn.ts';
import { isRight, type JudgedTarget, judgeAnswer, marksOf, type Ruler } from './judge.ts';
import { shapeNamed } from './measures/lookup.ts';
import { referenceGround, referenceHolding } from './plan/reference-ground.ts';
import { sharedGrounds } from './shared-slip.ts';

/** So many grounds are drawn for one draft in search of slips, and no more. */
const TRIED = 40;

/** Only drafts that are cheap to draw are looked through. */
const CHEAP = DRAFT_WORK / 100;

/**
 * The targets judged again where a slip made before them would be charged twice. That one was answered wrongly is no reason to
 * mark down another: neither what lies where it should, though the learner's own answer before it does not; nor what is off
 * only because it was drawn from the same wrong line. It is held against each such ground, and the one that earns most counts.
 */
export function judgedAgain(ruler: Ruler, judged: readonly JudgedTarget[], drawn: Drawn): readonly JudgedTarget[] {
  if (drawn.sheet.work > CHEAP) return judged;
  const own = referenceGround(ruler.exercise, ruler.givens);
  const found: JudgedTarget[] = [];
  const tries: Tries = { left: TRIED };
  for (const one of judged) {
    const slips = found.filter(isSlip);
    // Whose answers before it are the reference's own stands nowhere else.
    const elsewhere = slips.length > 0 || one.reference !== own;
    found.push(isSlip(one) && elsewhere ? best(one, slips, ruler, drawn, tries) : one);
  }
  return found;
}

function isSlip(judged: JudgedTarget): boolean {
  return judged.answer.found === 'right-kind' && !isRight(judged);
}

function best(
  one: JudgedTarget,
  slips: readonly JudgedTarget[],
  ruler: Ruler,
  drawn: Drawn,
  tries: Tries,
): JudgedTarget {
  let most = one;
  for (const again of onOtherGrounds(one, slips, ruler, drawn, tries)) {
    if (marksOf(again) > marksOf(most)) most = again;
    if (isRight(most)) break;
  }
  return most;
}

/** The target from every other ground there is, those that are drawn soonest first. */
function* onOtherGrounds(
  one: JudgedTarget,
  slips: readonly JudgedTarget[],
  ruler: Ruler,
  drawn: Drawn,
  tries: Tries,
): Generator<JudgedTarget> {
  const { target, answer, pins } = one;
  for (const left of fewer(pins, slips)) {
    const reference = referenceHolding(ruler.exercise, ruler.givens, left);
    const right = shapeNamed(reference, target.name);
    if (right !== null) yield judgeAnswer(ruler, target, answer, { right, reference, pins: left }, { by: 'apart' });
  }
  for (const slip of slips) {
    const again = { by: 'shared', slip: slip.target.name } as const;
    for (const ground of sharedGrounds(slip, one, ruler, drawn, tries))
      yield judgeAnswer(ruler, target, answer, { ...ground, pins }, again);
  }
}

/** The earlier answers that are held, without any; without those that are right, near as they may be; and without each that is off. */
function fewer(pins: Pins, slips: readonly JudgedTarget[]): readonly Pins[] {
  const off = new Set(slips.map(({ target }) => target.name).filter((name) => pins.has(name)));
  const none: Pins = new Map();
  if (off.size === 0) return [none];
  const keeping = (keeps: (name: Name) => boolean): Pins => new Map([...pins].filter(([name]) => keeps(name)));
  return [none, keeping((name) => off.has(name)), ...[...off].map((out) => keeping((name) => name !== out))];
}
