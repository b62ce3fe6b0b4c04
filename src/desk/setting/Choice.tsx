import type { VNode } from 'preact';

interface ChoiceProps<T extends string> {
  readonly says: string;
  readonly value: T;
  /** What may be chosen, each with its words. */
  readonly among: readonly (readonly [T, string])[];
  readonly onChoice: (value: T) => void;
}

/** A field to choose in. */
export function Choice<T extends string>({ says, value, among, onChoice }: ChoiceProps<T>): VNode {
  return (
    <label class="field">
      <span>{says}</span>
      <select value={value} onChange={(event) => onChoice(event.currentTarget.value as T)}>
        {among.map(([name, words]) => (
          <option key={name} value={name}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
