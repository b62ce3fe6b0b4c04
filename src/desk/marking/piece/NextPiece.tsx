import type { VNode } from 'preact';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../intake/taken.ts';
import { studentName } from '../student-name.ts';

interface NextPieceProps {
  readonly next: Sound;
  readonly say: Say;
  readonly onOpen: (piece: Sound) => void;
}

/** Goes on to the next student of the class with the same exercise: whoever marks thirty drafts need not look for each in the gradebook. */
export function NextPiece({ next, say, onOpen }: NextPieceProps): VNode {
  const go = (): void => {
    // Closed, the next piece goes back to its own place in the gradebook and not to the first one's.
    const place = CSS.escape(`${next.kept.student}/${next.kept.exercise}`);
    document.querySelector<HTMLElement>(`[data-cell="${place}"]`)?.focus({ preventScroll: true });
    onOpen(next);
  };
  return (
    <p class="piece-next">
      <button type="button" class="button" data-do="next-piece" onClick={go}>
        {say('mark.next-student', { student: studentName(next.kept.who, say) })}
      </button>
    </p>
  );
}
