import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import type { FigureRecipe } from '../../exchange/hand-in.ts';
import type { Figure } from '../../garment/figure.ts';
import { houseRules } from '../../garment/house-rules.ts';
import { people } from '../../garment/people.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { Strictness } from '../../grader/tolerance.ts';
import type { Key } from '../../words/message.ts';
import type { Setting } from '../model/setting.ts';
import type { Say } from '../say.ts';
import { OwnMeasures } from './OwnMeasures.tsx';

interface SetupProps {
  readonly exercise: Exercise;
  readonly setting: Setting;
  readonly figure: Figure;
  readonly say: Say;
  readonly onSetting: (setting: Setting) => void;
  /** A figure nobody has met yet. */
  readonly freshFigure: () => FigureRecipe;
}

const STRICTNESSES: readonly Strictness[] = ['learner', 'workroom', 'sample-room'];

/** Another figure, other house rules, another strictness. The working stays and is replayed. */
export function Setup({ exercise, setting, figure, say, onSetting, freshFigure }: SetupProps): VNode {
  return (
    <details class="setup">
      <summary>{say('table.setup')}</summary>
      <FigureChoice
        setting={setting}
        figure={figure}
        say={say}
        onFigure={(taken) => onSetting({ ...setting, figure: taken })}
        freshFigure={freshFigure}
      />
      {Object.keys(exercise.house).map((rule) => (
        <HouseChoice key={rule} rule={rule} exercise={exercise} setting={setting} say={say} onSetting={onSetting} />
      ))}
      <label class="field">
        <span>{say('table.strictness')}</span>
        <select
          value={setting.strictness}
          onChange={(event) => onSetting({ ...setting, strictness: event.currentTarget.value as Strictness })}
        >
          {STRICTNESSES.map((name) => (
            <option key={name} value={name}>
              {say(`table.strictness.${name}`)}
            </option>
          ))}
        </select>
      </label>
    </details>
  );
}

interface FigureChoiceProps {
  readonly setting: Setting;
  readonly figure: Figure;
  readonly say: Say;
  readonly onFigure: (figure: FigureRecipe) => void;
  readonly freshFigure: () => FigureRecipe;
}

function FigureChoice({ setting, figure, say, onFigure, freshFigure }: FigureChoiceProps): VNode {
  const [typing, setTyping] = useState(false);
  const value =
    typing || 'measures' in setting.figure ? 'own' : 'named' in setting.figure ? setting.figure.named : 'sampled';
  const take = (chosen: string): void => {
    setTyping(chosen === 'own');
    if (chosen === 'sampled') onFigure(freshFigure());
    else if (chosen !== 'own') onFigure({ named: chosen });
  };
  return (
    <div class="figure-choice">
      <label class="field">
        <span>{say('table.figure')}</span>
        <select value={value} onChange={(event) => take(event.currentTarget.value)}>
          <option value="sampled">{say('table.figure-sampled')}</option>
          {people.map(({ id, name, note }) => (
            <option key={id} value={id}>
              {say('table.figure-person', { name, note })}
            </option>
          ))}
          <option value="own">{say('table.figure-typed')}</option>
        </select>
      </label>
      {value === 'sampled' ? (
        <button type="button" class="button" data-do="new-figure" onClick={() => onFigure(freshFigure())}>
          {say('table.figure-another')}
        </button>
      ) : null}
      {value === 'own' ? (
        <OwnMeasures figure={figure} say={say} onFigure={(measures) => onFigure({ measures })} />
      ) : null}
      <p class="setup-note">{say('table.figure-kept')}</p>
    </div>
  );
}

interface HouseChoiceProps {
  readonly rule: string;
  readonly exercise: Exercise;
  readonly setting: Setting;
  readonly say: Say;
  readonly onSetting: (setting: Setting) => void;
}

function HouseChoice({ rule, exercise, setting, say, onSetting }: HouseChoiceProps): VNode | null {
  const known = houseRules.find(({ name }) => name === rule);
  if (!known) return null;
  // A choice that needs a measure the exercise does not state cannot be made.
  const choices = known.choices.filter(({ uses }) => uses.every((name) => name in exercise.style));
  return (
    <fieldset class="field house">
      <legend>{say(`house.${rule}` as Key & 'house.stand-rule')}</legend>
      {choices.map(({ name, source }) => (
        <label key={name} class="house-choice">
          <input
            type="radio"
            name={rule}
            checked={setting.house[rule] === name}
            onChange={() => onSetting({ ...setting, house: { ...setting.house, [rule]: name } })}
          />
          <span>
            {say(`house.${rule}.${name}` as Key & 'house.stand-rule.full')} <cite>{source}</cite>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
