import { replay } from '../../drafting/replay.ts';
import { isDrawn } from '../../drafting/shape.ts';
import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Point } from '../../geometry/point.ts';
import { dealOrder } from '../../grader/deal.ts';
import type { Unit } from '../../words/unit.ts';
import type { Box } from '../drawing/box.ts';
import { draw } from '../drawing/draw.ts';
import type { ClothPart, Drawing, Part } from '../drawing/drawing.ts';
import { shapeParts } from '../drawing/parts.ts';
import type { LiveScene, LiveState } from './live-scene.ts';

const nothing: Givens = { shapes: new Map(), measures: new Map() };

/** The scene's sheet where the figure stands: the draft replayed with the measures and marks as they were dragged. */
export function liveSheet(scene: LiveScene, state: LiveState): Sheet {
  const dragged = Object.entries(state.measures).map(([name, mm]) => [name, `${mm} mm`]);
  const dealt = dealOrder({ ...scene.order, style: { ...scene.order.style, ...Object.fromEntries(dragged) } });
  const steps = scene.steps.map((step) => {
    const at = state.marks[step.name];
    return step.verb === 'pencil' && at ? { ...step, at } : step;
  });
  return replay(dealt.ok ? dealt.givens : nothing, steps);
}

/** The picture of a live figure. */
export function liveDrawing(scene: LiveScene, sheet: Sheet, unit: Unit): Drawing {
  const { given = [], right = [] } = scene;
  const made = new Set(scene.steps.map(({ name }) => name).filter((name) => !given.includes(name)));
  return draw(sheet, {
    given: new Set([...sheet.shapes.keys()].filter((name) => !made.has(name))),
    shows: [...scene.shows, ...given],
    help: new Set(scene.help ?? []),
    hides: new Set([...(scene.hides ?? []), ...right]),
    labels: new Set(scene.labels),
    cloth: (scene.cloth ?? []).flatMap(({ outline, side }) => clothOf(sheet, outline, side)),
    more: right.flatMap((name) => rightOf(sheet, name, scene.box)),
    box: scene.box,
    unit,
  });
}

function rightOf(sheet: Sheet, name: Name, box: Box): readonly Part[] {
  const shape = sheet.shapes.get(name);
  return shape && isDrawn(shape) ? shapeParts(shape, 'right', box, name) : [];
}

function clothOf(sheet: Sheet, outline: Name, side: 'right' | 'other'): ClothPart[] {
  const shape = sheet.shapes.get(outline);
  return shape?.kind === 'curve' ? [{ kind: 'cloth', name: null, tone: 'made', outline: shape.path, side }] : [];
}

/** Where a mark lies; null when the draft does not reach it. */
export function markOn(sheet: Sheet, name: Name): Point | null {
  const shape = sheet.shapes.get(name);
  return shape?.kind === 'point' ? shape.point : null;
}
