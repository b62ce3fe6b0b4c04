import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import { arrowWay } from '../arrow-way.ts';
import { onPaper, type View } from '../board/view.ts';
import { type InMotion, useMotion } from '../in-motion.ts';
import type { Held } from '../model/grips.ts';
import type { Say } from '../say.ts';
import { useDrawn } from './use-drawn.ts';

interface GripHands {
  readonly onNudge: (held: Held, to: Point) => void;
  readonly onLetGo: () => void;
}

interface GripKeysProps extends GripHands {
  readonly grips: readonly Held[];
  readonly view: View;
  readonly motion: InMotion;
  readonly say: Say;
}

/**
 * What can be dragged, for the keyboard: a button over each free mark and handle. The pointer passes through to the board, and
 * what it drags is followed once the hand is still: none of these is seen before the keyboard comes to it.
 */
export function GripKeys({ grips, view: { scale, origin }, motion, say, onNudge, onLetGo }: GripKeysProps): VNode {
  const byKeys = useRef(false);
  const shown = useMotion(motion, () => byKeys.current)?.grips ?? grips;
  const hands = useRef<GripHands>({ onNudge, onLetGo });
  hands.current = { onNudge, onLetGo };
  const keys = useDrawn(
    (held: Held) => <GripKey key={held.key} held={held} at={onPaper(held.at, scale)} hands={hands} say={say} />,
    [scale, say],
  );
  return (
    <div
      class="grip-keys"
      style={{ transform: `translate(${origin.x}px, ${origin.y}px)` }}
      onFocusIn={() => {
        byKeys.current = true;
      }}
      onFocusOut={() => {
        byKeys.current = false;
      }}
    >
      {shown.map((held) => keys(held, held.key))}
    </div>
  );
}

interface GripKeyProps {
  readonly held: Held;
  readonly at: Point;
  readonly hands: { readonly current: GripHands };
  readonly say: Say;
}

function GripKey({ held, at, hands, say }: GripKeyProps): VNode {
  const { key, handle, name } = held;
  return (
    <button
      type="button"
      class="grip-key"
      data-grip={key}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      aria-label={
        handle
          ? say('table.handle', { name: { named: name }, number: handle.number })
          : say('table.free-mark', { name: { named: name } })
      }
      onBlur={() => hands.current.onLetGo()}
      onKeyDown={(event) => {
        const way = arrowWay(event);
        if (!way) return;
        event.preventDefault();
        event.stopPropagation();
        hands.current.onNudge(held, { x: held.at.x + way.x, y: held.at.y + way.y });
      }}
    />
  );
}
