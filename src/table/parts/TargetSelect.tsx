import type { VNode } from 'preact';
import type { Name } from '../../drafting/step.ts';
import type { Target } from '../../grader/exercise.ts';
import type { Say } from '../say.ts';

interface TargetSelectProps {
  readonly class: string;
  /** The words before the choice. */
  readonly words: string;
  /** What it is called to those who hear it, where the words before it do not say enough. */
  readonly label?: string;
  /** The target answered now; null for none. */
  readonly value: Name | null;
  readonly targets: readonly Target[];
  /** What answering none is called. */
  readonly none: string;
  readonly say: Say;
  readonly onTarget: (target: Name | null) => void;
}

/** Which target something answers, or that it answers none. Nothing where it could answer none. */
export function TargetSelect({ words, label, value, targets, none, say, ...props }: TargetSelectProps): VNode | null {
  if (targets.length === 0) return null;
  return (
    <label class={props.class}>
      <span aria-hidden={label !== undefined}>{words}</span>
      <select
        aria-label={label}
        value={value ?? ''}
        onChange={(event) => props.onTarget(event.currentTarget.value || null)}
      >
        <option value="">{none}</option>
        {targets.map(({ name }) => (
          <option key={name} value={name}>
            {say('table.label', { name: { named: name } })}
          </option>
        ))}
      </select>
    </label>
  );
}
