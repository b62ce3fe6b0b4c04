import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { evaluate } from '../../drafting/expression.ts';
import { type Figure, type FigureMeasure, figureMeasures, measureRanges, readFigure } from '../../garment/figure.ts';
import { angleText, lengthText } from '../../words/length.ts';
import { type Message, message } from '../../words/message.ts';
import type { Say } from '../say.ts';

interface OwnMeasuresProps {
  readonly figure: Figure;
  readonly say: Say;
  readonly onFigure: (figure: Figure) => void;
}

/** Body measures typed with their units. They stay in this browser and in what is handed in. */
export function OwnMeasures({ figure, say, onFigure }: OwnMeasuresProps): VNode {
  const [typed, setTyped] = useState<Readonly<Partial<Record<FigureMeasure, string>>>>({});
  const [trouble, setTrouble] = useState<Message | null>(null);
  const take = (event: Event): void => {
    event.preventDefault();
    const read = readTypedFigure(figure, typed);
    setTrouble(read.ok ? null : read.message);
    if (read.ok) onFigure(read.figure);
  };
  return (
    <form class="own-measures" onSubmit={take}>
      <p class="setup-note">{say('table.to-take')}</p>
      {figureMeasures.map((name) => (
        <MeasureField
          key={name}
          name={name}
          text={typed[name] ?? shown(figure, name, say)}
          say={say}
          onText={(text) => setTyped({ ...typed, [name]: text })}
        />
      ))}
      <button type="submit" class="button">
        {say('table.take-figure')}
      </button>
      {trouble ? (
        <p class="trouble" role="alert">
          {say.message(trouble)}
        </p>
      ) : null}
    </form>
  );
}

interface MeasureFieldProps extends Pick<OwnMeasuresProps, 'say'> {
  readonly name: FigureMeasure;
  readonly text: string;
  readonly onText: (text: string) => void;
}

/** One measure, and how it is taken. */
function MeasureField({ name, text, say, onText }: MeasureFieldProps): VNode {
  return (
    <>
      <label class="field">
        <span>{say('table.label', { name: { named: name } })}</span>
        <input
          type="text"
          autocomplete="off"
          size={9}
          aria-describedby={`taken-${name}`}
          value={text}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      </label>
      <p class="setup-note" id={`taken-${name}`}>
        {say(`table.to-take.${name}`)}
      </p>
    </>
  );
}

function shown(figure: Figure, name: FigureMeasure, { reader }: Say): string {
  const value = figure[name];
  return measureRanges[name].unit === 'mm' ? lengthText(value, reader.unit) : angleText((value * Math.PI) / 180);
}

type TypedFigure = { readonly ok: true; readonly figure: Figure } | { readonly ok: false; readonly message: Message };

/** The figure with what was typed in place of its measures; what was not touched stays exact. */
function readTypedFigure(figure: Figure, typed: Readonly<Partial<Record<FigureMeasure, string>>>): TypedFigure {
  const measures: Record<string, number> = { ...figure };
  for (const [name, text] of Object.entries(typed)) {
    const amount = evaluate(text, new Map());
    if (!amount.ok) return { ok: false, message: amount.message };
    const { dimension, value } = amount.quantity;
    const wanted = measureRanges[name as FigureMeasure].unit === 'mm' ? 'length' : 'angle';
    if (dimension !== wanted)
      return { ok: false, message: message('expression.wanted', { text, found: dimension, wanted }) };
    measures[name] = wanted === 'length' ? value : (value * 180) / Math.PI;
  }
  const read = readFigure(measures);
  return read.ok ? read : { ok: false, message: read.errors[0]?.message ?? message('table.place-form') };
}
