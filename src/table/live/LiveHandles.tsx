import type { VNode } from 'preact';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Point } from '../../geometry/point.ts';
import { lengthText } from '../../words/length.ts';
import { message } from '../../words/message.ts';
import { nameText, type Reader, say } from '../../words/say.ts';
import { type Box, heightOf, widthOf } from '../drawing/box.ts';
import { figure } from '../drawing/path-data.ts';
import { sayWhere } from '../model/say-change.ts';
import { standing } from './constrain.ts';
import { heldBy, type LiveHandle, type LiveScene, type LiveState } from './live-scene.ts';
import { markOn } from './live-sheet.ts';
import { useHandleDrag } from './use-handle-drag.ts';

interface LiveHandlesProps {
  readonly scene: LiveScene;
  readonly state: LiveState;
  readonly sheet: Sheet;
  readonly reader: Reader;
  readonly onDrag: (handle: LiveHandle, to: Point) => void;
  readonly onNudge: (handle: LiveHandle, way: Point) => void;
}

/** The ringed marks one can hold, over the drawing. */
export function LiveHandles({ scene, sheet, onDrag, onNudge, ...rest }: LiveHandlesProps): VNode {
  return (
    // biome-ignore lint/a11y/useSemanticElements: nothing in HTML groups what lies in an SVG.
    <svg
      class="live-handles"
      role="group"
      aria-label={say(message('table.live-hint', { marks: scene.handles.length }), rest.reader)}
    >
      {scene.handles.map((handle) => {
        const at = markOn(sheet, heldBy(handle));
        return at ? (
          <Held
            key={heldBy(handle)}
            at={at}
            box={scene.box}
            says={sayHandle(handle, { ...rest, scene, sheet }, at)}
            onDrag={(to) => onDrag(handle, to)}
            onNudge={(way) => onNudge(handle, way)}
          />
        ) : null;
      })}
    </svg>
  );
}

interface Spoken {
  readonly label: string;
  readonly text: string;
  readonly range: readonly [number, number, number] | null;
}

function sayHandle(
  handle: LiveHandle,
  { scene, state, sheet, reader }: Pick<LiveHandlesProps, 'scene' | 'state' | 'sheet' | 'reader'>,
  at: Point,
): Spoken {
  if (handle.drags === 'mark') {
    const where = say(sayWhere(handle.mark, at, sheet), reader);
    return {
      label: say(message('table.free-mark', { name: { named: handle.mark } }), reader),
      text: where,
      range: null,
    };
  }
  const value = standing(scene, state, handle.measure);
  return {
    label: nameText(handle.measure, reader),
    text: lengthText(value, reader.unit),
    range: [handle.from, value, handle.to],
  };
}

interface HeldProps {
  readonly at: Point;
  readonly box: Box;
  readonly says: Spoken;
  readonly onDrag: (to: Point) => void;
  readonly onNudge: (way: Point) => void;
}

function Held({ at, box, says, onDrag, onNudge }: HeldProps): VNode {
  const gestures = useHandleDrag({ box, at, onDrag, onNudge });
  const place = { x: percent((at.x - box.min.x) / widthOf(box)), y: percent((box.max.y - at.y) / heightOf(box)) };
  const [least, now, most] = says.range ?? [];
  const slider = says.range
    ? { 'aria-valuemin': least, 'aria-valuenow': now, 'aria-valuemax': most, 'aria-valuetext': says.text }
    : {};
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: only a place in the drawing; the group inside carries the name.
    <svg class="symbol" {...place}>
      <g
        class="live-handle"
        tabIndex={0}
        role={says.range ? 'slider' : 'button'}
        aria-label={says.range ? says.label : `${says.label} ${says.text}`}
        {...slider}
        {...gestures}
      >
        <circle class="live-reach" r="22" />
        <circle class="live-ring" r="9" />
      </g>
    </svg>
  );
}

function percent(part: number): string {
  return `${figure(part * 100)}%`;
}
