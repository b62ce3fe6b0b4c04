import type { VNode } from 'preact';
import type { Say } from '../../../table/say.ts';
import type { Filter } from './sorted.ts';

interface BookFilterProps {
  readonly filter: Filter;
  readonly say: Say;
  readonly onFilter: (filter: Filter) => void;
}

/** Which lines of the gradebook are shown. */
export function BookFilter({ filter, say, onFilter }: BookFilterProps): VNode {
  return (
    <div class="book-filter">
      <label class="field">
        <span>{say('mark.filter')}</span>
        <input
          type="text"
          value={filter.text}
          onInput={({ currentTarget }) => onFilter({ ...filter, text: currentTarget.value })}
        />
      </label>
      <label class="desk-tick">
        <input
          type="checkbox"
          checked={filter.onlyRemarked}
          onChange={({ currentTarget }) => onFilter({ ...filter, onlyRemarked: currentTarget.checked })}
        />{' '}
        {say('mark.only-remarked')}
      </label>
    </div>
  );
}
