import type { VNode } from 'preact';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { spelt } from '../model/name-trouble.ts';
import { whatStays } from '../model/stays.ts';
import type { Say } from '../say.ts';
import { NameBox } from './NameBox.tsx';
import { StepWords } from './StepWords.tsx';
import type { StepLineProps } from './step-line-props.ts';
import { TargetSelect } from './TargetSelect.tsx';

/** One step of the working: its sentence, its name, what it answers, and a way to rub it out. */
export function StepLine(props: StepLineProps): VNode {
  const { index, step, bench, sheet, say, dispatch, onLight } = props;
  const problem = sheet.problems.find((one) => one.step === index);
  const stays = whatStays(step, measuresBefore(bench.steps, index, sheet));
  const done = index < bench.upTo;
  return (
    <li class="step" data-done={done} onPointerEnter={() => onLight(step.name)} onPointerLeave={() => onLight(null)}>
      <button
        type="button"
        class="step-number"
        aria-label={say('table.stand-here', { number: index + 1 })}
        aria-current={bench.upTo === index + 1 ? 'step' : undefined}
        onClick={() => dispatch({ do: 'go', upTo: index + 1 })}
      >
        {index + 1}
      </button>
      <div class="step-body">
        <p class="step-words">
          <StepWords {...props} />
          <StepLength name={step.name} sheet={sheet} say={say} />
        </p>
        {problem ? <p class="step-problem">{say.sentence(problem.message)}</p> : null}
        {stays ? <p class="step-stays">{say.message(stays)}</p> : null}
        <StepEnds {...props} />
      </div>
    </li>
  );
}

/** Under the sentence: what the step is called, what it answers, and a way to rub it out. */
function StepEnds(props: StepLineProps): VNode {
  const { index, step, say, dispatch } = props;
  return (
    <div class="step-ends">
      <NameBox name={step.name} say={say} onName={(typed) => dispatch({ do: 'rename', index, name: spelt(typed) })} />
      <StepAnswer {...props} />
      <button
        type="button"
        class="button button--quiet"
        data-do="erase"
        aria-label={say('table.erase-step', { name: { named: step.name } })}
        onClick={() => dispatch({ do: 'erase', index })}
      >
        {say('table.erase')}
      </button>
    </div>
  );
}

/** What a step could have named: the measures, and what was taped before it. */
function measuresBefore(steps: readonly Step[], index: number, { measures }: Sheet): Sheet['measures'] {
  const later = new Set(steps.slice(index).map(({ name }) => name));
  return new Map([...measures].filter(([name]) => !later.has(name)));
}

function StepLength({
  name,
  sheet,
  say,
}: {
  readonly name: Name;
  readonly sheet: Sheet;
  readonly say: Say;
}): VNode | null {
  const shape = sheet.shapes.get(name);
  return shape?.kind === 'length' ? (
    <output class="step-length">{say('table.makes-length', { length: { mm: shape.length } })}</output>
  ) : shape?.kind === 'angle' ? (
    <output class="step-length">{say('table.makes-length', { length: { radians: shape.angle } })}</output>
  ) : null;
}

/** "Answers: break point", and a way to say otherwise. */
function StepAnswer({ index, step, room, sheet, say, dispatch }: StepLineProps): VNode {
  const kind = sheet.shapes.get(step.name)?.kind;
  return (
    <TargetSelect
      class="step-answers"
      words={say('table.answers')}
      label={say('table.answers-for', { name: { named: step.name } })}
      value={step.answers ?? null}
      targets={room.targets.filter(({ name, makes }) => makes === kind || name === step.answers)}
      none={say('table.answers-nothing')}
      say={say}
      onTarget={(target) => dispatch({ do: 'answer', index, target })}
    />
  );
}
