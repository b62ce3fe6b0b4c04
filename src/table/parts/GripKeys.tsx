import type { VNode } from 'preact';
import type { Point } from '../../geometry/point.ts';
import { arrowWay } from '../arrow-way.ts';
import { toPixels, type View } from '../board/view.ts';
import type { Held } from '../model/grips.ts';
import type { Say } from '../say.ts';

interface GripKeysProps {
  readonly grips: readonly Held[];
  readonly view: View;
  readonly say: Say;
  readonly onDrag: (held: Held, to: Point) => void;
  readonly onLetGo: () => void;
}

/** What can be dragged, for the keyboard: a button over each free mark and handle. The pointer passes through to the board. */
export function GripKeys({ grips, view, say, onDrag, onLetGo }: GripKeysProps): VNode {
  return (
    <div class="grip-keys">
      {grips.map((held) => {
        const at = toPixels(view, held.at);
        const name = { named: held.name };
        return (
          <button
            key={held.key}
            type="button"
            class="grip-key"
            data-grip={held.key}
            style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
            aria-label={
              held.handle ? say('table.handle', { name, number: held.handle.number }) : say('table.free-mark', { name })
            }
            onBlur={onLetGo}
            onKeyDown={(event) => {
              const way = arrowWay(event);
              if (!way) return;
              event.preventDefault();
              event.stopPropagation();
              onDrag(held, { x: held.at.x + way.x, y: held.at.y + way.y });
            }}
          />
        );
      })}
    </div>
  );
}
