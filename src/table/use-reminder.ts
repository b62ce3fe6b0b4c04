import { useMemo, useState } from 'preact/hooks';
import type { Name, Step } from '../drafting/step.ts';
import type { Bench, Room } from './model/bench.ts';
import { unanswered } from './model/unanswered.ts';

export interface ReminderOnTable {
  /** Targets not pointed out yet, while one is reminded of them. */
  readonly targets: readonly Name[];
  /** Before a check: what to be reminded of; nothing the second time, or when there is nothing. */
  readonly ask: () => readonly Name[];
  readonly drop: () => void;
}

/** Reminds once, before a draft is checked, of what is not pointed out as an answer. A change of the draft ends it. */
export function useReminder({ steps }: Bench, room: Room): ReminderOnTable {
  const [asked, setAsked] = useState<readonly Step[] | null>(null);
  const open = asked === steps;
  return {
    targets: useMemo(() => (open ? unanswered(steps, room) : []), [open, steps, room]),
    ask: () => {
      const targets = open ? [] : unanswered(steps, room);
      setAsked(targets.length > 0 ? steps : null);
      return targets;
    },
    drop: () => setAsked(null),
  };
}
