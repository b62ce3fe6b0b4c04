import { isDrawn } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import { distance, type Point } from '../../geometry/point.ts';
import type { Unit } from '../../words/unit.ts';
import { nearestPlaceOn } from '../model/catch.ts';
import type { LiveHandle, LiveScene, LiveState, MarkHandle, MeasureHandle } from './live-scene.ts';
import { liveSheet, markOn } from './live-sheet.ts';

/** A millimetre, or a sixteenth of an inch: what a measure moves by, in mm. */
export function grainOf(unit: Unit): number {
  return unit === 'cm' ? 1 : 25.4 / 16;
}

/**
 * The figure with a handle put as near as it may come to `to`. The same for pointer and keys. A measure is found by
 * replaying the draft, so that any measure can be held by any mark that depends on it.
 */
export function dragTo(scene: LiveScene, state: LiveState, handle: LiveHandle, to: Point, unit: Unit): LiveState {
  if (handle.drags === 'measure') {
    return withMeasure(state, handle.measure, nearestValue(scene, state, handle, to, unit));
  }
  const at = constrained(scene, state, handle, to);
  return { ...state, marks: { ...state.marks, [handle.mark]: [at.x, at.y] } };
}

/** The figure with a handle moved one grain, or ten, in the direction of an arrow key. */
export function nudge(scene: LiveScene, state: LiveState, handle: LiveHandle, way: Point, unit: Unit): LiveState {
  if (handle.drags === 'mark') {
    const at = markOn(liveSheet(scene, state), handle.mark);
    const grain = grainOf(unit);
    return at ? dragTo(scene, state, handle, { x: at.x + way.x * grain, y: at.y + way.y * grain }, unit) : state;
  }
  const now = standing(scene, state, handle.measure);
  const step = grainOf(unit) * Math.max(Math.abs(way.x), Math.abs(way.y));
  const more = withMeasure(state, handle.measure, within(handle, onGrain(now + step, unit)));
  const less = withMeasure(state, handle.measure, within(handle, onGrain(now - step, unit)));
  return progress(scene, state, more, handle, way) >= progress(scene, state, less, handle, way) ? more : less;
}

/** How far a change moves the handle's mark in a direction, mm. */
function progress(scene: LiveScene, from: LiveState, to: LiveState, handle: MeasureHandle, way: Point): number {
  const before = markOn(liveSheet(scene, from), handle.by);
  const after = markOn(liveSheet(scene, to), handle.by);
  return before && after ? (after.x - before.x) * way.x + (after.y - before.y) * way.y : Number.NEGATIVE_INFINITY;
}

/** What a style measure stands at, mm. */
export function standing(scene: LiveScene, state: LiveState, measure: Name): number {
  return state.measures[measure] ?? liveSheet(scene, state).measures.get(measure)?.value ?? 0;
}

function withMeasure(state: LiveState, measure: Name, mm: number): LiveState {
  return { ...state, measures: { ...state.measures, [measure]: mm } };
}

function within({ from, to }: MeasureHandle, value: number): number {
  return Math.min(to, Math.max(from, value));
}

function onGrain(value: number, unit: Unit): number {
  return Math.round(value / grainOf(unit)) * grainOf(unit);
}

/** The value of a measure that brings its mark nearest to a place: the range is narrowed by thirds, on the grain. */
function nearestValue(scene: LiveScene, state: LiveState, handle: MeasureHandle, to: Point, unit: Unit): number {
  const grain = grainOf(unit);
  const value = (count: number): number => within(handle, count * grain);
  const away = (count: number): number => {
    const at = markOn(liveSheet(scene, withMeasure(state, handle.measure, value(count))), handle.by);
    return at ? distance(at, to) : Number.POSITIVE_INFINITY;
  };
  let low = Math.floor(handle.from / grain);
  let high = Math.ceil(handle.to / grain);
  while (high - low > 2) {
    const third = Math.floor((high - low) / 3);
    if (away(low + third) <= away(high - third)) high -= third;
    else low += third;
  }
  const left = [low, low + 1, high].filter((count) => count <= high);
  return value(left.reduce((best, count) => (away(count) < away(best) ? count : best)));
}

function constrained(scene: LiveScene, state: LiveState, { within: box, along }: MarkHandle, to: Point): Point {
  const shape = along === undefined ? undefined : liveSheet(scene, state).shapes.get(along);
  const on = shape && isDrawn(shape) ? nearestPlaceOn(shape, to) : to;
  if (!box) return on;
  return { x: clampTo(on.x, box.min.x, box.max.x), y: clampTo(on.y, box.min.y, box.max.y) };
}

function clampTo(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
