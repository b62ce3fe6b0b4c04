import type { VNode } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { type Figure, type FigureMeasure, figureMeasures, measureRanges } from '../../garment/figure.ts';
import { angleText, lengthText } from '../../words/length.ts';
import type { Message } from '../../words/message.ts';
import { type MeasureTroubles, readTypedFigure, type TypedMeasures } from '../model/typed-figure.ts';
import type { Say } from '../say.ts';

interface OwnMeasuresProps {
  readonly figure: Figure;
  readonly say: Say;
  readonly onFigure: (figure: Figure) => void;
}

/** Body measures typed with their units. They stay in this browser and in what is handed in. */
export function OwnMeasures({ figure, say, onFigure }: OwnMeasuresProps): VNode {
  const [typed, setTyped] = useState<TypedMeasures>({});
  const [troubles, setTroubles] = useState<MeasureTroubles>({});
  const [doubt, setDoubt] = useState<Message | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const take = (event: Event): void => {
    event.preventDefault();
    const read = readTypedFigure(figure, typed);
    setTroubles(read.ok ? {} : read.troubles);
    setDoubt(read.ok ? read.doubt : null);
    if (read.ok) onFigure(read.figure);
    else
      form.current?.querySelector<HTMLElement>(`#own-${figureMeasures.find((name) => read.troubles[name])}`)?.focus();
  };
  return (
    <form class="own-measures" ref={form} onSubmit={take}>
      <p class="setup-note">{say('table.to-take')}</p>
      {figureMeasures.map((name) => (
        <MeasureField
          key={name}
          name={name}
          text={typed[name] ?? shown(figure, name, say)}
          trouble={troubles[name] ?? null}
          say={say}
          onText={(text) => setTyped({ ...typed, [name]: text })}
        />
      ))}
      <button type="submit" class="button">
        {say('table.take-figure')}
      </button>
      <p class="setup-note" role="status">
        {doubt ? say.message(doubt) : null}
      </p>
    </form>
  );
}

interface MeasureFieldProps extends Pick<OwnMeasuresProps, 'say'> {
  readonly name: FigureMeasure;
  readonly text: string;
  readonly trouble: Message | null;
  readonly onText: (text: string) => void;
}

/** One measure, how it is taken, and what is the matter with what was typed. */
function MeasureField({ name, text, trouble, say, onText }: MeasureFieldProps): VNode {
  return (
    <>
      <label class="field">
        <span>{say('table.label', { name: { named: name } })}</span>
        <input
          id={`own-${name}`}
          type="text"
          autocomplete="off"
          size={9}
          aria-invalid={trouble !== null}
          aria-describedby={trouble ? `trouble-${name} taken-${name}` : `taken-${name}`}
          value={text}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      </label>
      {trouble ? (
        <p class="trouble" id={`trouble-${name}`} role="alert">
          {say.message(trouble)}
        </p>
      ) : null}
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
