import { formById } from '../../drafting/form.ts';
import type { Blank, Field } from '../../drafting/verbs.ts';
import type { Hand, ToolId } from './bench.ts';

/** A tool as it lies on the table's edge: the ways it can be used, the first of them as it is picked up. */
export interface Tool {
  readonly id:
    | 'pencil'
    | 'rule'
    | 'tape'
    | 'square'
    | 'parallel'
    | 'compass'
    | 'dividers'
    | 'bevel'
    | 'curve'
    | 'gauge'
    | 'pin-seam'
    | 'fold'
    | 'pin'
    | 'loupe'
    | 'protractor';
  readonly uses: readonly ToolId[];
}

export interface ToolGroup {
  readonly id: 'marks' | 'lines' | 'curves' | 'cloth' | 'measures';
  readonly tools: readonly Tool[];
}

/** The table's edge, in the order the hand meets them. */
export const toolGroups: readonly ToolGroup[] = [
  {
    id: 'lines',
    tools: [
      { id: 'parallel', uses: ['parallel', 'parallel-through'] },
      { id: 'rule', uses: ['rule'] },
      { id: 'square', uses: ['square', 'foot'] },
      { id: 'bevel', uses: ['slant'] },
    ],
  },
  {
    id: 'marks',
    tools: [
      { id: 'tape', uses: ['along'] },
      { id: 'pencil', uses: ['cross', 'pencil'] },
      { id: 'compass', uses: ['compass'] },
      { id: 'dividers', uses: ['part'] },
    ],
  },
  {
    id: 'curves',
    tools: [
      { id: 'curve', uses: ['curve'] },
      { id: 'gauge', uses: ['offset'] },
      { id: 'pin-seam', uses: ['seam'] },
    ],
  },
  {
    id: 'cloth',
    tools: [
      { id: 'fold', uses: ['fold'] },
      { id: 'pin', uses: ['swing', 'swing-angle'] },
    ],
  },
  {
    id: 'measures',
    tools: [
      { id: 'loupe', uses: ['measure', 'tape', 'tape-between', 'tape-set'] },
      { id: 'protractor', uses: ['protractor', 'protractor-along'] },
    ],
  },
];

export const tools: readonly Tool[] = toolGroups.flatMap((group) => group.tools);

/** The tool that is used this way. */
export function toolFor(use: ToolId): Tool {
  return tools.find((tool) => tool.uses.includes(use)) as Tool;
}

const anything: Blank = { takes: 'object', kinds: ['point', 'line', 'curve'] };

/** The blanks of a tool, in the order of its sentence. */
export function fieldsOf(tool: ToolId): readonly Field[] {
  if (tool === 'measure') {
    return [
      { field: 'one', blank: anything, optional: false },
      { field: 'other', blank: anything, optional: true },
    ];
  }
  // A curve's handles are dragged once it is drawn; there is no blank for them.
  return formById(tool).fields.filter((field) => field.blank.takes !== 'shape');
}

export function blankOf(hand: Hand, field: string): Field | null {
  return fieldsOf(hand.tool).find((one) => one.field === field) ?? null;
}
