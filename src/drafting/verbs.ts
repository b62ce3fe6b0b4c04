import type { ShapeKind } from './shape.ts';
import type { Verb } from './step.ts';

/** What a blank of a step's sentence takes. */
export type Blank =
  | { readonly takes: 'object'; readonly kinds: readonly ShapeKind[] }
  | { readonly takes: 'objects'; readonly kinds: readonly ShapeKind[]; readonly least: number }
  | { readonly takes: 'run' }
  | { readonly takes: 'length' | 'angle' | 'number' }
  | { readonly takes: 'toward' | 'near' | 'turn' | 'place' | 'heading' | 'shape' };

export interface Field {
  readonly field: string;
  readonly blank: Blank;
  readonly optional: boolean;
}

/** One way of saying a step: its fields in the order of the sentence, whose words are the message `step.<id>`. */
export interface Form {
  readonly id: FormId;
  readonly verb: Verb;
  readonly fields: readonly Field[];
  /** `same` makes what it was given. */
  readonly makes: ShapeKind | 'same';
}

export type FormId = Verb | 'parallel-through' | 'swing-angle' | 'tape-between' | 'tape-set' | 'protractor-along';

type Simple = Extract<Blank, { takes: string; kinds?: never }>['takes'];

const object = <const F extends string, const K extends readonly ShapeKind[]>(field: F, ...kinds: K) =>
  ({ field, blank: { takes: 'object', kinds }, optional: false }) as const;
const takes = <const F extends string, const W extends Simple>(field: F, what: W) =>
  ({ field, blank: { takes: what }, optional: false }) as const;
const maybe = <const F extends Field>({ field, blank }: F) =>
  ({ field, blank, optional: true }) as const as {
    readonly field: F['field'];
    readonly blank: F['blank'];
    readonly optional: true;
  };

/** Every form of every verb. The reader, the JSON Schema, the sentences and the table are all made from this list. */
export const table = [
  { id: 'pencil', verb: 'pencil', makes: 'point', fields: [takes('at', 'place')] },
  {
    id: 'along',
    verb: 'along',
    makes: 'point',
    fields: [
      object('on', 'line', 'curve'),
      object('from', 'point'),
      takes('distance', 'length'),
      takes('toward', 'toward'),
    ],
  },
  {
    id: 'cross',
    verb: 'cross',
    makes: 'point',
    fields: [object('one', 'line', 'curve'), object('other', 'line', 'curve'), maybe(takes('near', 'near'))],
  },
  {
    id: 'compass',
    verb: 'compass',
    makes: 'point',
    fields: [object('about', 'point'), takes('radius', 'length'), object('on', 'line', 'curve'), takes('near', 'near')],
  },
  { id: 'foot', verb: 'foot', makes: 'point', fields: [object('from', 'point'), object('on', 'line')] },
  {
    id: 'part',
    verb: 'part',
    makes: 'point',
    fields: [object('from', 'point'), object('to', 'point'), takes('fraction', 'number')],
  },
  { id: 'rule', verb: 'rule', makes: 'line', fields: [object('from', 'point'), object('to', 'point')] },
  {
    id: 'square',
    verb: 'square',
    makes: 'line',
    fields: [object('to', 'line', 'curve'), object('through', 'point')],
  },
  {
    id: 'parallel',
    verb: 'parallel',
    makes: 'line',
    fields: [object('to', 'line'), takes('distance', 'length'), takes('side', 'toward')],
  },
  {
    id: 'parallel-through',
    verb: 'parallel',
    makes: 'line',
    fields: [object('to', 'line'), object('through', 'point')],
  },
  {
    id: 'slant',
    verb: 'slant',
    makes: 'line',
    fields: [object('to', 'line'), takes('angle', 'angle'), takes('turn', 'turn'), object('through', 'point')],
  },
  {
    id: 'curve',
    verb: 'curve',
    makes: 'curve',
    fields: [
      { field: 'through', blank: { takes: 'objects', kinds: ['point'], least: 2 }, optional: false },
      maybe(takes('leave', 'heading')),
      maybe(takes('arrive', 'heading')),
      maybe(takes('shape', 'shape')),
    ],
  },
  {
    id: 'offset',
    verb: 'offset',
    makes: 'curve',
    fields: [object('of', 'curve'), takes('distance', 'length'), takes('side', 'toward')],
  },
  { id: 'seam', verb: 'seam', makes: 'curve', fields: [{ field: 'run', blank: { takes: 'run' }, optional: false }] },
  {
    id: 'fold',
    verb: 'fold',
    makes: 'same',
    fields: [object('what', 'point', 'line', 'curve'), object('over', 'line')],
  },
  {
    id: 'swing',
    verb: 'swing',
    makes: 'same',
    fields: [
      object('what', 'point', 'line', 'curve'),
      object('about', 'point'),
      takes('by', 'length'),
      takes('at', 'length'),
      takes('turn', 'turn'),
    ],
  },
  {
    id: 'swing-angle',
    verb: 'swing',
    makes: 'same',
    fields: [
      object('what', 'point', 'line', 'curve'),
      object('about', 'point'),
      takes('angle', 'angle'),
      takes('turn', 'turn'),
    ],
  },
  {
    id: 'tape',
    verb: 'tape',
    makes: 'length',
    fields: [object('along', 'curve', 'line'), maybe(object('from', 'point')), maybe(object('to', 'point'))],
  },
  { id: 'tape-between', verb: 'tape', makes: 'length', fields: [object('from', 'point'), object('to', 'point')] },
  { id: 'tape-set', verb: 'tape', makes: 'length', fields: [takes('length', 'length')] },
  { id: 'protractor', verb: 'protractor', makes: 'angle', fields: [object('from', 'line'), object('to', 'line')] },
  { id: 'protractor-along', verb: 'protractor', makes: 'angle', fields: [object('along', 'curve')] },
] as const satisfies readonly Form[];

/** The same list, for whoever reads it as data. */
export const forms: readonly Form[] = table;
