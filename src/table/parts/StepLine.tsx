import { Fragment, type VNode } from 'preact';
import { useState } from 'preact/hooks';
import { formOf } from '../../drafting/form.ts';
import { replay } from '../../drafting/replay.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Field } from '../../drafting/verbs.ts';
import type { Bench, Filling, Room } from '../model/bench.ts';
import { spelt } from '../model/name-trouble.ts';
import { whatStays } from '../model/stays.ts';
import type { Say } from '../say.ts';
import type { Dispatch } from '../use-bench.ts';
import { AnyBlank } from './AnyBlank.tsx';
import { blankFor } from './blank-for.ts';
import { wantedIn } from './blank-words.ts';
import { NameBox } from './NameBox.tsx';
import { offered, type Piece, piecesOf } from './sentence-pieces.ts';
import { TargetSelect } from './TargetSelect.tsx';

interface StepLineProps {
  readonly index: number;
  readonly step: Step;
  readonly bench: Bench;
  readonly room: Room;
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
  readonly say: Say;
  readonly dispatch: Dispatch;
  readonly onLight: (name: Name | null) => void;
}

/** One step of the working: its sentence, its name, what it answers, and a way to rub it out. */
export function StepLine(props: StepLineProps): VNode {
  const { index, step, bench, sheet, say, dispatch, onLight } = props;
  const problem = sheet.problems.find((one) => one.step === index);
  const stays = whatStays(step, measuresBefore(bench.steps, index, sheet));
  const done = index < bench.upTo;
  const name = { named: step.name };
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
        <div class="step-ends">
          <NameBox
            name={step.name}
            say={say}
            onName={(typed) => dispatch({ do: 'rename', index, name: spelt(typed) })}
          />
          <StepAnswer {...props} />
          <button
            type="button"
            class="button button--quiet"
            data-do="erase"
            aria-label={say('table.erase-step', { name })}
            onClick={() => dispatch({ do: 'erase', index })}
          >
            {say('table.erase')}
          </button>
        </div>
      </div>
    </li>
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

/** The sentence, its blanks as words that can be pressed and changed in place. */
function StepWords({ index, step, bench, room, sheet, shown, say, dispatch, onLight }: StepLineProps): VNode {
  const [editing, setEditing] = useState<string | null>(null);
  const form = formOf(step as never);
  if (!form) return <span>{step.name}</span>;
  const filled = step as unknown as Readonly<Record<string, Filling>>;
  const change = (field: string, value: Filling | null): void => {
    dispatch({ do: 'amend', index, field, value });
    // A list goes on being filled.
    if (!Array.isArray(value)) setEditing(null);
  };
  const faulty = sheet.problems.find((one) => one.step === index)?.field;
  // An empty blank that may stay empty is offered where it is missed, and at a curve, whose ends are often squared later.
  const isOffered = ({ field, optional }: Field): boolean =>
    !optional || field === editing || field === faulty || form.id === 'curve';
  const pieces = offered(piecesOf(form.id, filled, sheet, say), isOffered);
  return (
    <>
      {pieces.map((piece) => {
        if (piece.kind === 'words') return <span key={piece.key}>{piece.text}</span>;
        const { field } = piece.field;
        if (field !== editing)
          return <BlankWords key={field} piece={piece} say={say} onPress={() => setEditing(field)} />;
        const before = replay(room.givens, bench.steps.slice(0, index));
        return (
          <Fragment key={field}>
            <AnyBlank
              {...blankFor(piece, filled, { sheet: before, shown, say })}
              autoFocus
              id={`step-${index}-${field}`}
              current
              onFill={(filling) => change(field, filling)}
              onClear={() => (piece.field.optional ? change(field, null) : setEditing(null))}
              onFocus={() => onLight(null)}
              onBlur={() => setEditing(null)}
              onLight={onLight}
              onNext={() => setEditing(null)}
              onEnter={() => setEditing(null)}
              onEscape={() => setEditing(null)}
            />
            {piece.stop}
          </Fragment>
        );
      })}
    </>
  );
}

interface BlankWordsProps {
  readonly piece: Extract<Piece, { kind: 'blank' }>;
  readonly say: Say;
  readonly onPress: () => void;
}

function BlankWords({ piece, say, onPress }: BlankWordsProps): VNode {
  const wanted = wantedIn(piece.field, say);
  return (
    <span class="blank-and-stop">
      <button
        type="button"
        class={piece.filled ? 'blank-words' : 'blank-words blank-words--empty'}
        data-field={piece.field.field}
        onClick={onPress}
      >
        {piece.text || wanted}
      </button>
      {piece.stop}
    </span>
  );
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
