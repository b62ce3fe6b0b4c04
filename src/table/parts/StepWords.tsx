import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { formOf } from '../../drafting/form.ts';
import { replay } from '../../drafting/replay.ts';
import type { Field } from '../../drafting/verbs.ts';
import type { Filling } from '../model/bench.ts';
import type { Say } from '../say.ts';
import { AnyBlank } from './AnyBlank.tsx';
import { blankFor } from './blank-for.ts';
import { wantedIn } from './blank-words.ts';
import { offered, type Piece, piecesOf } from './sentence-pieces.ts';
import type { StepLineProps } from './step-line-props.ts';

/** The sentence, its blanks as words that can be pressed and changed in place. */
export function StepWords(props: StepLineProps): VNode {
  const { index, step, sheet, say, dispatch } = props;
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
        return (
          <EditedBlank
            key={field}
            {...props}
            piece={piece}
            filled={filled}
            onFill={(filling) => change(field, filling)}
            onDone={() => setEditing(null)}
          />
        );
      })}
    </>
  );
}

interface EditedBlankProps extends StepLineProps {
  readonly piece: Extract<Piece, { kind: 'blank' }>;
  readonly filled: Readonly<Record<string, Filling>>;
  /** Null where what stood there is taken away. */
  readonly onFill: (value: Filling | null) => void;
  readonly onDone: () => void;
}

/** The blank that is being changed: it offers what lay on the sheet before its step. */
function EditedBlank(props: EditedBlankProps): VNode {
  const { piece, filled, index, bench, room, shown, say, onFill, onDone, onLight } = props;
  const { field, optional } = piece.field;
  const sheet = replay(room.givens, bench.steps.slice(0, index));
  return (
    <>
      <AnyBlank
        {...blankFor(piece, filled, { sheet, shown, say })}
        autoFocus
        id={`step-${index}-${field}`}
        current
        onFill={onFill}
        onClear={() => (optional ? onFill(null) : onDone())}
        onFocus={() => onLight(null)}
        onTaken={onDone}
        onLight={onLight}
        onNext={onDone}
        onEnter={onDone}
        onEscape={onDone}
      />
      {piece.stop}
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
