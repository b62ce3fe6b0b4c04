import { millimetres } from '../../../src/drafting/quantity.ts';
import { replay } from '../../../src/drafting/replay.ts';
import type { Sheet } from '../../../src/drafting/sheet.ts';
import type { Step } from '../../../src/drafting/step.ts';
import type { Figure } from '../../../src/garment/figure.ts';
import { givensOf } from '../../../src/garment/measures.ts';
import { people } from '../../../src/garment/people.ts';

/** A collar's style, mm. */
export interface Style {
  readonly overlap: number;
  readonly 'break-rise': number;
  readonly stand: number;
  readonly fall: number;
  readonly 'gorge-depth': number;
  readonly 'notch-width': number;
  readonly 'notch-drop': number;
  readonly 'lapel-width': number;
  readonly 'collar-end': number;
}

export const usual: Style = {
  overlap: 25.4,
  'break-rise': 38,
  stand: 30,
  fall: 45,
  'gorge-depth': 55,
  'notch-width': 62,
  'notch-drop': 12.7,
  'lapel-width': 85,
  'collar-end': 40,
};

/** As far as the roll line. */
export const toRollLine: readonly Step[] = [
  { verb: 'parallel', name: 'overlap-edge', to: 'centre-front', distance: 'overlap', side: 'left' },
  { verb: 'parallel', name: 'break-level', to: 'waist', distance: 'break-rise', side: 'up' },
  { verb: 'cross', name: 'break-point', one: 'overlap-edge', other: 'break-level' },
  {
    verb: 'along',
    name: 'stand-point',
    on: 'shoulder-line',
    from: 'neck-point',
    distance: 'stand',
    toward: 'left',
  },
  { verb: 'rule', name: 'roll-line', from: 'break-point', to: 'stand-point' },
  { verb: 'parallel', name: 'neck-line', to: 'roll-line', through: 'neck-point' },
];

/** The notch as worn and folded over, the gorge and the lapel. */
export const lapel: readonly Step[] = [
  { verb: 'parallel', name: 'notch-level', to: 'collarbone-level', distance: 'notch-drop', side: 'down' },
  { verb: 'parallel', name: 'notch-reach', to: 'roll-line', distance: 'notch-width', side: 'right' },
  { verb: 'cross', name: 'notch-worn', one: 'notch-level', other: 'notch-reach' },
  { verb: 'fold', name: 'notch', what: 'notch-worn', over: 'roll-line' },
  {
    verb: 'along',
    name: 'gorge-corner',
    on: 'neck-line',
    from: 'neck-point',
    distance: 'gorge-depth',
    toward: 'down',
  },
  { verb: 'rule', name: 'gorge', from: 'gorge-corner', to: 'notch' },
  { verb: 'parallel', name: 'lapel-reach', to: 'roll-line', distance: 'lapel-width', side: 'left' },
  { verb: 'cross', name: 'lapel-point', one: 'gorge', other: 'lapel-reach' },
  { verb: 'curve', name: 'lapel-edge', through: ['lapel-point', 'break-point'] },
];

/** The back part laid on and swung: the line moved by `by` at `at`, expressions that may use the edge ease. */
export function swung(by = 'edge-ease', at = 'stand + fall', turn: 'clockwise' | 'anticlockwise' = 'clockwise') {
  return [
    { verb: 'tape', name: 'back-neck', along: 'back-neckline' },
    {
      verb: 'along',
      name: 'seam-end',
      on: 'neck-line',
      from: 'neck-point',
      distance: 'gorge-depth',
      toward: 'down',
    },
    { verb: 'seam', name: 'joined', run: ['back-neckline', 'neck-point', 'seam-end'] },
    { verb: 'protractor', name: 'phi', along: 'joined' },
    { verb: 'tape', name: 'edge-ease', length: '(fall - stand) * phi' },
    { verb: 'swing', name: 'back-line', what: 'neck-line', about: 'neck-point', by, at, turn },
  ] as const satisfies readonly Step[];
}

/** The collar drawn: its centre back, neck edge and outer edge. */
export const drawnCollar: readonly Step[] = [
  {
    verb: 'along',
    name: 'collar-back',
    on: 'back-line',
    from: 'neck-point',
    distance: 'back-neck',
    toward: 'up',
  },
  { verb: 'square', name: 'collar-centre-back', to: 'back-line', through: 'collar-back' },
  {
    verb: 'along',
    name: 'outer-back',
    on: 'collar-centre-back',
    from: 'collar-back',
    distance: 'stand + fall',
    toward: 'left',
  },
  {
    verb: 'curve',
    name: 'true-back',
    through: ['collar-back', 'neck-point', 'gorge-corner'],
    leave: { along: 'back-line' },
    arrive: { along: 'neck-line' },
  },
  { verb: 'seam', name: 'collar-neck-edge', run: ['true-back', 'gorge-corner', 'notch'] },
  { verb: 'square', name: 'end-line', to: 'gorge', through: 'notch' },
  { verb: 'along', name: 'collar-point', on: 'end-line', from: 'notch', distance: 'collar-end', toward: 'up' },
  { verb: 'square', name: 'neck-square', to: 'neck-line', through: 'neck-point' },
  {
    verb: 'along',
    name: 'over-neck',
    on: 'neck-square',
    from: 'neck-point',
    distance: 'stand + fall',
    toward: 'left',
  },
  {
    verb: 'swing',
    name: 'over-shoulder',
    what: 'over-neck',
    about: 'neck-point',
    by: 'edge-ease / 2',
    at: 'stand + fall',
    turn: 'clockwise',
  },
  {
    verb: 'curve',
    name: 'outer-edge',
    through: ['outer-back', 'over-shoulder', 'collar-point'],
    leave: { square: 'collar-centre-back' },
  },
];

export const wholeCollar: readonly Step[] = [...toRollLine, ...lapel, ...swung(), ...drawnCollar];

/** A draft on a figure, by default the first of the invented ones. Every step of it has to be carried out. */
export function drafted(steps: readonly Step[], style: Partial<Style> = {}, figure = firstFigure()): Sheet {
  const measures = Object.entries({ ...usual, ...style }).map(([name, mm]) => [name, millimetres(mm)] as const);
  const made = givensOf(figure, new Map(measures));
  if (!made.ok) throw new Error('The figure has no block.');
  const sheet = replay(made.givens, steps);
  const [problem] = sheet.problems;
  if (problem) throw new Error(`The step ${problem.name} cannot be carried out.`);
  return sheet;
}

function firstFigure(): Figure {
  const [person] = people;
  if (!person) throw new Error('There is nobody to draw for.');
  return person.figure;
}

/** A point of a sheet that must be there. */
export function markOn(sheet: Sheet, name: string) {
  const shape = sheet.shapes.get(name);
  if (shape?.kind !== 'point') throw new Error(`There is no mark ${name}.`);
  return shape.point;
}
