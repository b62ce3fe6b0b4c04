import type { Part } from '../drawing/drawing.ts';
import { made } from './svg.ts';

/** Layers of the board, bottom to top. */
export const LAYERS = ['cloth', 'band', 'faint', 'ink', 'arrow', 'mark', 'grip'] as const;

export type Layer = (typeof LAYERS)[number];

/** A group for each layer. */
export function layersOf(): Readonly<Record<Layer, SVGGElement>> {
  return Object.fromEntries(LAYERS.map((layer) => [layer, made('g', {})])) as Record<Layer, SVGGElement>;
}

export function layerOf(part: Part): Layer {
  if (part.kind === 'line') return part.faint ? 'faint' : 'ink';
  return part.kind === 'curve' ? 'ink' : part.kind;
}
