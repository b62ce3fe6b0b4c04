import { type HouseChoice, type HouseRule, houseRules } from '../garment/house-rules.ts';
import { ruleInWords } from '../garment/rules-in-force.ts';
import { message } from '../words/message.ts';
import { mending } from './advice.ts';
import type { Bench, Slip } from './bench.ts';
import { isRightAnswer, type JudgedTarget } from './judge.ts';
import { layOut } from './lay-out.ts';
import { shapeNamed } from './measures/lookup.ts';
import { referenceHolding } from './plan/reference-ground.ts';
import type { Strictness } from './tolerance.ts';

/**
 * An answer that is right by another house's rule: the reference replayed, from where the learner stood, with each other
 * choice of the rules that the exercise names.
 */
export function otherRuleOf(bench: Bench, judged: JudgedTarget): Slip | null {
  for (const rule of houseRules.filter(({ name }) => name in bench.exercise.house)) {
    const inForce = choiceIn(rule, bench);
    const other = rule.choices.find((choice) => choice !== inForce && isRightBy(rule, choice, bench, judged));
    if (inForce === undefined || other === undefined) continue;
    const followed = message('grader.other-rule', {
      target: { named: judged.target.name },
      other: { said: ruleInWords(rule, other) },
      ours: { said: ruleInWords(rule, inForce) },
    });
    return {
      id: `by-${other.name}`,
      says: [followed, message('grader.other-rule-why'), ...mending(judged, bench.givens)],
    };
  }
  return null;
}

function choiceIn(rule: HouseRule, { order }: Bench): HouseChoice | undefined {
  const chosen = order.house[rule.name] ?? rule.usual;
  return rule.choices.find(({ name }) => name === chosen);
}

/**
 * Two rules may lie little further apart than the learner's tolerance is wide. A mark made by eye between them follows
 * neither, so another rule is named only where it is met as closely as anybody asks.
 */
const SURE: Strictness = 'sample-room';

function isRightBy(rule: HouseRule, choice: HouseChoice, { exercise, order }: Bench, judged: JudgedTarget): boolean {
  const dealt = layOut(exercise, { ...order, house: { ...order.house, [rule.name]: choice.name } });
  if (!dealt.ok) return false;
  const { givens } = dealt;
  const reference = referenceHolding(exercise, givens, judged.pins);
  const right = shapeNamed(reference, judged.target.name);
  if (right === null) return false;
  return isRightAnswer({ exercise, givens, strictness: SURE }, judged.target, judged.answer, { right, reference });
}
