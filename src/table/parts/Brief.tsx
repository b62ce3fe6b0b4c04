import type { VNode } from 'preact';
import type { Quantity } from '../../drafting/quantity.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { figureMeasures } from '../../garment/figure.ts';
import { personNamed } from '../../garment/people.ts';
import { rulesInForce } from '../../garment/rules-in-force.ts';
import type { Exercise } from '../../grader/exercise.ts';
import { type Value, written } from '../../words/message.ts';
import type { Setting } from '../model/setting.ts';
import type { Say } from '../say.ts';
import { InUnits } from './InUnits.tsx';

interface BriefWordsProps {
  readonly exercise: Exercise;
  readonly setting: Setting;
  readonly measures: ReadonlyMap<Name, Quantity>;
  readonly say: Say;
}

/** The order in words: what to make, and for whom. */
export function BriefWords({ exercise, setting, measures, say }: BriefWordsProps): VNode {
  return (
    <section class="brief" aria-labelledby="brief-title">
      <h2 id="brief-title">{say('table.brief')}</h2>
      <p class="brief-words">
        <InUnits say={say} words={(speak) => speak.message(written(exercise.brief, valuesOf(measures)))} />
      </p>
      <p class="brief-who">{whose(setting, say)}</p>
      {isDealt(setting) ? <p class="brief-survey">{say('table.figure-survey')}</p> : null}
    </section>
  );
}

interface BriefMeasuresProps {
  readonly exercise: Exercise;
  readonly setting: Setting;
  readonly sheet: Sheet;
  readonly measures: ReadonlyMap<Name, Quantity>;
  readonly say: Say;
}

/** The order in figures: style, body, and what marks are given for. */
export function BriefMeasures({ exercise, setting, sheet, measures, say }: BriefMeasuresProps): VNode {
  const body = figureMeasures.filter((name) => measures.has(name));
  const taken = (exercise.given ?? []).map(({ name }) => name).filter((name) => measures.has(name));
  // A bare number says which house rule is in force; it is nothing to lay off.
  const style = [...measures]
    .filter(([name, { dimension }]) => dimension !== 'number' && ![...figureMeasures, ...taken].includes(name))
    .map(([name]) => name);
  return (
    <div class="brief-measures">
      {style.length > 0 ? (
        <Measures title={say('table.style')} names={style} measures={measures} about={exercise.style} say={say} />
      ) : null}
      <Rules setting={setting} say={say} />
      {taken.length > 0 ? <Measures title={say('table.taken')} names={taken} measures={measures} say={say} /> : null}
      <Asks exercise={exercise} sheet={sheet} say={say} />
      <Measures title={say('table.measures')} names={body} measures={measures} say={say} />
    </div>
  );
}

/** The house rules in force, in words: what follows from them is on the order by name only. */
function Rules({ setting, say }: Pick<BriefMeasuresProps, 'setting' | 'say'>): VNode | null {
  const rules = rulesInForce(setting.house);
  if (rules.length === 0) return null;
  return (
    <div class="measures rules">
      <h3>{say('table.house-rules')}</h3>
      {rules.map((rule) => (
        <p key={say.message(rule)}>
          <InUnits say={say} words={(speak) => speak.message(rule)} />
        </p>
      ))}
    </div>
  );
}

/** Measures as an author's text may use them. */
export function valuesOf(measures: ReadonlyMap<Name, Quantity>): Readonly<Record<string, Value>> {
  return Object.fromEntries([...measures].map(([name, quantity]) => [name, amount(quantity)]));
}

function amount({ dimension, value }: Quantity): Value {
  if (dimension === 'length') return { mm: value };
  return dimension === 'angle' ? { radians: value } : value;
}

/** Whether the figure comes from the sampler, which follows a survey. */
function isDealt({ figure }: Setting): boolean {
  return 'sampled' in figure;
}

function whose({ figure }: Setting, say: Say): string {
  if ('measures' in figure) return say('table.figure-own');
  const person = 'named' in figure ? personNamed(figure.named) : null;
  return person ? say('table.figure-of', { name: person.name }) : say('table.figure-unnamed');
}

/** What a measure of the exercise's own is. */
function AboutMeasure({ text, say }: { readonly text: string | undefined; readonly say: Say }): VNode | null {
  if (text === undefined) return null;
  return (
    <dd class="measure-about">
      <InUnits say={say} words={(speak) => speak.message(written(text, {}))} />
    </dd>
  );
}

interface MeasuresProps {
  readonly title: string;
  readonly names: readonly Name[];
  readonly measures: ReadonlyMap<Name, Quantity>;
  /** What the exercise's own measures are. */
  readonly about?: Exercise['style'];
  readonly say: Say;
}

function Measures({ title, names, measures, about = {}, say }: MeasuresProps): VNode {
  return (
    <div class="measures">
      <h3>{title}</h3>
      <dl>
        {names.map((name) => (
          <div key={name}>
            <dt>{say('table.label', { name: { named: name } })}</dt>
            <dd>
              <InUnits
                say={say}
                words={(speak) => speak('table.label', { name: amount(measures.get(name) as Quantity) })}
              />
            </dd>
            <AboutMeasure text={about[name]?.about} say={say} />
          </div>
        ))}
      </dl>
    </div>
  );
}

/** What is asked, its marks, and what answers it so far. */
function Asks({
  exercise,
  sheet,
  say,
}: {
  readonly exercise: Exercise;
  readonly sheet: Sheet;
  readonly say: Say;
}): VNode {
  return (
    <div class="measures asks">
      <h3>{say('table.asks')}</h3>
      <dl>
        {exercise.targets.map(({ name }) => {
          // A step that could not be carried out answers nothing.
          const answered = sheet.shapes.has(sheet.answers.get(name) ?? '');
          const marks = exercise.checks
            .filter(({ target }) => target === name)
            .reduce((sum, check) => sum + check.marks, 0);
          return (
            <div key={name} data-answered={answered}>
              <dt>{say('table.label', { name: { named: name } })}</dt>
              <dd>
                {say('table.asks-marks', { marks })}
                {answered ? <span class="unseen">{say('table.asks-answered')}</span> : null}
              </dd>
            </div>
          );
        })}
      </dl>
    </div>
  );
}
