import type { VNode } from 'preact';
import type { SetFigures } from '../../exchange/set.ts';
import { people } from '../../garment/people.ts';
import type { SampleGroup } from '../../garment/sample.ts';
import type { Say } from '../../table/say.ts';
import { Choice } from './Choice.tsx';
import type { Change, Sheet } from './sheet.ts';
import { freshSeed } from './use-set-sheet.ts';

type How = 'stated' | 'named' | 'sampled' | 'each';

const HOWS: readonly How[] = ['stated', 'named', 'sampled', 'each'];
const GROUPS: readonly SampleGroup[] = ['women', 'men', 'anyone'];

interface FiguresChoiceProps {
  readonly sheet: Sheet;
  readonly say: Say;
  readonly change: Change;
}

/** On whom the drafts of the set are made. */
export function FiguresChoice({ sheet, say, change }: FiguresChoiceProps): VNode {
  const { figures } = sheet;
  const how = howOf(figures);
  const take = (next: SetFigures): void => change((now) => ({ ...now, figures: next }));
  return (
    <>
      <Choice
        says={say('desk.figures')}
        value={how}
        among={HOWS.map((name) => [name, say(`desk.figures.${name}`)] as const)}
        onChoice={(name) => take(startOf(name))}
      />
      {typeof figures === 'object' && 'named' in figures ? (
        <Choice
          says={say('desk.person')}
          value={figures.named}
          among={people.map(({ id, name, note }) => [id, say('table.figure-person', { name, note })] as const)}
          onChoice={(named) => take({ named })}
        />
      ) : null}
      {how === 'sampled' || how === 'each' ? (
        <Dealt how={how} group={groupOf(figures)} say={say} change={change} />
      ) : null}
    </>
  );
}

interface DealtProps extends Pick<FiguresChoiceProps, 'say' | 'change'> {
  readonly how: 'sampled' | 'each';
  readonly group: SampleGroup;
}

/** From which people of the survey figures are dealt, and dealing them anew. */
function Dealt({ how, group, say, change }: DealtProps): VNode {
  return (
    <>
      <Choice
        says={say('desk.group')}
        value={group}
        among={GROUPS.map((name) => [name, say(`desk.group.${name}`)] as const)}
        onChoice={(next) => change((now) => ({ ...now, figures: how === 'each' ? { each: next } : { sampled: next } }))}
      />
      <p class="desk-note">{say('desk.survey-what')}</p>
      <p class="desk-note">
        {how === 'each' ? say('desk.each-why') : null}{' '}
        <button
          type="button"
          class="button button--quiet"
          onClick={() => change((now) => ({ ...now, seed: freshSeed() }))}
        >
          {say('desk.deal-again')}
        </button>
      </p>
    </>
  );
}

function howOf(figures: SetFigures): How {
  return typeof figures === 'string' ? figures : (Object.keys(figures)[0] as How);
}

function groupOf(figures: SetFigures): SampleGroup {
  if (typeof figures === 'string' || 'named' in figures) return 'anyone';
  return 'each' in figures ? figures.each : figures.sampled;
}

/** What a way of choosing figures starts from. */
function startOf(how: How): SetFigures {
  if (how === 'stated') return how;
  if (how === 'named') return { named: people[0]?.id ?? '' };
  return how === 'each' ? { each: 'anyone' } : { sampled: 'anyone' };
}
