import type { VNode } from 'preact';
import type { Say } from '../say.ts';
import type { ViewId } from './which.ts';

interface ViewRowProps {
  readonly views: readonly ViewId[];
  readonly open: ViewId | null;
  /** The panel the buttons open. */
  readonly panel: string;
  readonly say: Say;
  readonly onOpen: (view: ViewId | null) => void;
}

/** Under the sheet: how else the draft can be looked at. Nothing while there is no other way. */
export function ViewRow({ views, open, panel, say, onOpen }: ViewRowProps): VNode | null {
  if (views.length === 0) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: three buttons, and no form they belong to.
    <div class="view-row" role="group" aria-label={say('views.row')}>
      {views.map((view) => (
        <button
          key={view}
          type="button"
          class="button"
          data-do={`view-${view}`}
          aria-expanded={view === open}
          {...(view === open ? { 'aria-controls': panel } : {})}
          onClick={() => onOpen(view === open ? null : view)}
        >
          {say(`views.${view}`)}
        </button>
      ))}
    </div>
  );
}
