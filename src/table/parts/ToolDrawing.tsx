import type { VNode } from 'preact';
import type { Tool } from '../model/tools.ts';

/**
 * The tools of the table, each drawn as the thing itself, on a sheet of 32 by 32. Own drawings: strokes for what is
 * there, a dot or a dashed stroke for what it leaves on the paper.
 */
const DRAWINGS: Readonly<Record<Tool['id'], { readonly tool: string; readonly trace: string }>> = {
  // A pencil lying ready, and its cross.
  pencil: { tool: 'M6 26l3-8L22 5l5 5-13 13-8 3M9 18l5 5M19 8l5 5', trace: 'M3 29l4-4M3 25l4 4' },
  // A straight rule with its edge marked.
  rule: { tool: 'M3 22 24 4l5 6L8 28zM9 17l2 2M13 13l3 3M17 10l2 2M21 7l2 2', trace: 'M2 18 20 3' },
  // A tailor's square: two arms.
  square: { tool: 'M6 4h5v18h17v5H6zM6 9h2.5M6 14h2.5M6 19h2.5M16 27v-2.5M22 27v-2.5', trace: 'M14 19V5' },
  // Two rules held apart by their links.
  parallel: { tool: 'M4 8h24v4H4zM4 21h24v4H4zM9 12l4 9M20 12l4 9', trace: 'M4 29h24' },
  // A sliding bevel: its stock, and the blade set at a slant.
  bevel: {
    tool: 'M3 25h17v5H3zM5.500 27.500h9M17 27.500 27 5M20.500 25 29 6l-2-1M17 27.500a1.500 1.500 0 1 0 .1 0',
    trace: 'M13 22 21 4',
  },
  // A half circle with its scale.
  protractor: {
    tool: 'M3 24a13 13 0 0 1 26 0zM9 24a7 7 0 0 1 14 0M16 11v3M6.8 14.8l2.1 2.1M25.2 14.8l-2.1 2.1',
    trace: 'M16 24 25 7',
  },
  // A tape with its end hanging.
  tape: {
    tool: 'M13 6a8 8 0 1 0 0 16h14v5H9M13 10a4 4 0 1 0 0 8 4 4 0 0 0 0-8M17 22v2.5M21 22v2.5M25 22v2.5',
    trace: 'M29 20l-4 0M27 18v4',
  },
  // A pair of compasses.
  compass: { tool: 'M16 4v3M16 7 8 27M16 7l7 17M13.5 13h5M21.6 20.5l3 5', trace: 'M4 22q11 9 25 2' },
  // Dividers: two points.
  dividers: { tool: 'M16 3v4M16 7 7 26M16 7l9 19M13 13q3 2 6 0', trace: 'M5 29h22M16 27v4' },
  // A French curve.
  curve: {
    tool: 'M5 27C4 15 10 5 20 4c6 0 8 5 5 8-4 4-9 3-12 8-1 3-4 6-8 7M19 8.5a2 2 0 1 0 .1 0M10 21a1.500 1.500 0 1 0 .1 0',
    trace: 'M2 22C3 12 8 3 17 2',
  },
  // A seam gauge with its slide.
  gauge: { tool: 'M3 12h26v6H3zM12 9h5v12h-5zM6 12v3M9 12v3M20 12v3M23 12v3M26 12v3', trace: 'M3 26q13-4 26 0' },
  // Pieces laid end to end, pinned.
  'pin-seam': {
    tool: 'M3 20q6-10 12-4M17 14q7-6 12 3M12 8l7 11M11 6.500a1.500 1.500 0 1 0 2 1.500',
    trace: 'M3 26q6-10 13-5 7 5 13-2',
  },
  // Cloth turned back over its fold.
  fold: { tool: 'M5 28V9l9-5v19zM14 4l12 8-12 11M14 12l6 0M14 16l4 0', trace: 'M14 1v28' },
  // A pin with its head, and the turn about it.
  pin: {
    tool: 'M21 5a3.500 3.500 0 1 0 4 4M19.500 12.500 8 27M21 5l4 4',
    trace: 'M8 9a19 19 0 0 1 16 15M20 23l4 1 1-4',
  },
  // A tape laid between two pins.
  loupe: {
    tool: 'M3 13h26v8H3zM7 13v4M11 13v3M15 13v4M19 13v3M23 13v4M27 13v3',
    trace: 'M3 26h26M6 24l-3 2 3 2M26 24l3 2-3 2',
  },
};

/** A small drawing of a tool. Its word stands beside it, so it says nothing of its own. */
export function ToolDrawing({ id }: { readonly id: Tool['id'] }): VNode {
  const { tool, trace } = DRAWINGS[id];
  return (
    <svg class="tool-drawing" viewBox="0 0 32 32" aria-hidden="true" focusable="false">
      <path class="tool-shape" d={tool} />
      <path class="tool-trace" d={trace} />
    </svg>
  );
}
