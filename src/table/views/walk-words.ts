import type { MatchMark, Walk } from '../../garment/collar/walk.ts';
import { type Message, message } from '../../words/message.ts';

/** Smaller than the eye and the tape can tell, mm. */
const NOTHING = 0.5;

/** What is to be seen where it has been walked to: the last match mark that has been reached. */
export function sayReached({ marks }: Walk, stops: readonly number[], fraction: number): Message {
  const reached = stops.findLastIndex((stop) => stop <= fraction + 1e-6);
  const mark = marks[Math.max(0, reached)];
  if (mark && reached > 0) return sayMark(mark);
  return message('views.walk-begin', { mark: { named: mark?.name ?? 'centre-back' } });
}

function sayMark({ name, seam, collar }: MatchMark): Message {
  const off = collar - seam;
  const where = Math.abs(off) < NOTHING ? 'meets' : off > 0 ? 'past' : 'short';
  return message('views.walk-at', { mark: { named: name }, off: { mm: Math.abs(off) }, where });
}

/** Whether it walks, and where it does not. */
export function sayWalk({ stretches, marks, past }: Walk, within: number): readonly Message[] {
  const wrong = stretches.filter(({ over }) => Math.abs(over) > within);
  const left = past > within ? [sayPast(marks.at(-1), past)] : [];
  if (wrong.length === 0 && left.length === 0) return [message('views.walk-meets', { within: { stated: within } })];
  return [
    ...wrong.map(({ from, to, over }) =>
      message('views.walk-over', {
        from: { named: from },
        to: { named: to },
        off: { mm: Math.abs(over) },
        which: over > 0 ? 'long' : 'short',
      }),
    ),
    ...left,
  ];
}

function sayPast(mark: MatchMark | undefined, past: number): Message {
  return message('views.walk-past', { mark: { named: mark?.name ?? 'notch' }, off: { mm: past } });
}
