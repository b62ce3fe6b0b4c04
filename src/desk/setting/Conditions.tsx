import type { VNode } from 'preact';
import type { Name } from '../../drafting/step.ts';
import { type Feedback, SET_CHECKS } from '../../exchange/set.ts';
import { houseRules } from '../../garment/house-rules.ts';
import { type Strictness, strictnessFactor } from '../../grader/tolerance.ts';
import type { Say } from '../../table/say.ts';
import type { Key } from '../../words/message.ts';
import { tolerancesOf } from '../set-rules.ts';
import { Choice } from './Choice.tsx';
import { dateTimeOf, utcOf } from './date-time.ts';
import { FiguresChoice } from './FiguresChoice.tsx';
import { type Change, ruled, type Sheet } from './sheet.ts';

const FEEDBACKS: readonly Feedback[] = ['verdict', 'direction', 'place'];
const STRICTNESSES = Object.keys(strictnessFactor) as Strictness[];

interface ConditionsProps {
  readonly sheet: Sheet;
  /** House rules that some exercise of the set has. */
  readonly rules: readonly Name[];
  readonly say: Say;
  readonly change: Change;
}

/** How the set is done and marked. */
export function Conditions({ sheet, rules, say, change }: ConditionsProps): VNode {
  return (
    <section class="desk-how" aria-labelledby="desk-how">
      <h2 id="desk-how">{say('desk.how')}</h2>
      <FiguresChoice sheet={sheet} say={say} change={change} />
      <Choice
        says={say('desk.strictness')}
        value={sheet.strictness}
        among={STRICTNESSES.map((name) => [name, say(`table.strictness.${name}`)] as const)}
        onChoice={(strictness) => change((now) => ({ ...now, strictness }))}
      />
      <p class="desk-note">{say('desk.tolerances', tolerancesOf(sheet.strictness))}</p>
      {rules.map((rule) => (
        <RuleChoice key={rule} rule={rule} sheet={sheet} say={say} change={change} />
      ))}
      <Help sheet={sheet} say={say} change={change} />
      <Due sheet={sheet} say={say} change={change} />
    </section>
  );
}

/** What help a student has: what a check tells and how often, and hints. */
function Help({ sheet, say, change }: Omit<ConditionsProps, 'rules'>): VNode {
  return (
    <>
      <Choice
        says={say('desk.feedback')}
        value={sheet.feedback}
        among={FEEDBACKS.map((name) => [name, say(`desk.feedback.${name}`)] as const)}
        onChoice={(feedback) => change((now) => ({ ...now, feedback }))}
      />
      <label class="field">
        <span>{say('desk.checks')}</span>
        <input
          type="number"
          name="checks"
          min={1}
          max={SET_CHECKS}
          value={sheet.checks ?? ''}
          aria-describedby="desk-checks-note"
          onInput={({ currentTarget }) => change((now) => ({ ...now, checks: wholeIn(currentTarget, SET_CHECKS) }))}
        />
        <span id="desk-checks-note">{say('desk.checks-note')}</span>
      </label>
      <label class="desk-tick">
        <input
          type="checkbox"
          name="hints"
          checked={sheet.hints}
          onChange={({ currentTarget }) => change((now) => ({ ...now, hints: currentTarget.checked }))}
        />{' '}
        {say('desk.hints')}
      </label>
    </>
  );
}

/** By when it should be handed in. */
function Due({ sheet, say, change }: Omit<ConditionsProps, 'rules'>): VNode {
  return (
    <label class="field">
      <span>{say('desk.due')}</span>
      <input
        type="datetime-local"
        name="due"
        max="9999-12-30T23:59"
        value={dateTimeOf(sheet.due)}
        aria-describedby="desk-due-note"
        onChange={({ currentTarget }) => change((now) => ({ ...now, due: utcOf(currentTarget.value) }))}
      />
      <span id="desk-due-note">{say('desk.due-note')}</span>
    </label>
  );
}

const USUAL = 'usual';

function RuleChoice({ rule, sheet, say, change }: Omit<ConditionsProps, 'rules'> & { readonly rule: Name }): VNode {
  const choices = houseRules.find(({ name }) => name === rule)?.choices ?? [];
  return (
    <Choice
      says={say(`house.${rule}` as Key & 'house.stand-rule')}
      value={sheet.house[rule] ?? USUAL}
      among={[
        [USUAL, say('desk.house-usual')],
        ...choices.map(({ name }) => [name, say(`house.${rule}.${name}` as Key & 'house.stand-rule.full')] as const),
      ]}
      onChoice={(choice) => change((now) => ruled(now, rule, choice === USUAL ? null : choice))}
    />
  );
}

/** The whole number that stands in a field, kept within what may stand there; null where it is empty. */
function wholeIn(input: HTMLInputElement, most: number): number | null {
  if (input.value.trim() === '' || Number.isNaN(input.valueAsNumber)) return null;
  return Math.min(most, Math.max(1, Math.round(input.valueAsNumber)));
}
