import { isDrawn, type ShapeKind } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Blank } from '../../drafting/verbs.ts';
import { distance } from '../../geometry/point.ts';
import { type Message, message } from '../../words/message.ts';
import type { Filling } from './bench.ts';
import { nearestPlaceOn } from './catch.ts';
import { runWith } from './run-with.ts';

/** One entry of a blank's list: what it fills in, and its words. */
export interface Option {
  readonly value: Filling;
  readonly words: Message;
  /** The object it names, to light up on the sheet. */
  readonly lights: Name | null;
}

/** A mark this near, mm, is listed as lying on a line. */
const ON = 0.05;

/** What a blank's list offers, in the order of the sheet: what is given, then what was drawn. */
export function optionsFor(
  blank: Blank,
  sheet: Sheet,
  shown: (name: Name) => boolean,
  filled: Filling | undefined,
): Option[] {
  switch (blank.takes) {
    case 'object':
      return objects(sheet, shown, blank.kinds);
    case 'objects':
      return more(objects(sheet, shown, blank.kinds), filled);
    case 'run':
      return runOn([...objects(sheet, shown, ['point', 'curve']), ...partsOf(sheet, shown)], filled, sheet);
    case 'length':
    case 'angle':
    case 'number':
      return measures(sheet, blank.takes);
    case 'toward':
      return [...words('left', 'right', 'up', 'down'), ...objects(sheet, shown, ['point'])];
    case 'near':
      return [...words('left', 'right', 'up', 'down'), ...objects(sheet, shown, ['point'])];
    case 'turn':
      return words('clockwise', 'anticlockwise');
    case 'heading':
      return headings(sheet, shown);
    default:
      return [];
  }
}

function objects(sheet: Sheet, shown: (name: Name) => boolean, kinds: readonly ShapeKind[]): Option[] {
  return [...sheet.shapes]
    .filter(([name, shape]) => kinds.includes(shape.kind) && shown(name))
    .map(([name]) => ({ value: name, words: message('table.label', { name: { named: name } }), lights: name }));
}

function words(...values: readonly string[]): Option[] {
  return values.map((value) => ({ value, words: message('table.label', { name: { named: value } }), lights: null }));
}

/** Measures by name, each with its value: a name follows the figure, a number does not. */
function measures(sheet: Sheet, dimension: 'length' | 'angle' | 'number'): Option[] {
  return [...sheet.measures]
    .filter(([, quantity]) => quantity.dimension === dimension)
    .map(([name, quantity]) => ({
      value: name,
      words: message('table.measure-option', { name: { named: name }, value: worth(quantity.value, dimension) }),
      lights: null,
    }));
}

function worth(value: number, dimension: 'length' | 'angle' | 'number') {
  if (dimension === 'length') return { mm: value };
  return dimension === 'angle' ? { radians: value } : value;
}

/** A list grows by what is chosen. */
function more(options: readonly Option[], filled: Filling | undefined): Option[] {
  const list = Array.isArray(filled) ? (filled as readonly Name[]) : [];
  return options.map((option) => ({ ...option, value: [...list, option.value as Name] }));
}

/** A run grows so too, and takes the part of a curve that its marks bound. */
function runOn(options: readonly Option[], filled: Filling | undefined, sheet: Sheet): Option[] {
  const run = Array.isArray(filled) ? (filled as readonly unknown[]) : [];
  return options.map((option) => ({ ...option, value: runWith(run, option.value, sheet) as never }));
}

/** Curves and lines between two marks that lie on them. */
function partsOf(sheet: Sheet, shown: (name: Name) => boolean): Option[] {
  const marks = [...sheet.shapes].flatMap(([name, shape]) =>
    shape.kind === 'point' && shown(name) ? [{ name, at: shape.point }] : [],
  );
  return [...sheet.shapes].flatMap(([along, shape]) => {
    if (!isDrawn(shape) || shape.kind === 'point' || !shown(along)) return [];
    const on = marks.filter(({ at }) => distance(nearestPlaceOn(shape, at), at) < ON);
    return on.flatMap((from) => on.filter((to) => to !== from).map((to) => partOption(along, from.name, to.name)));
  });
}

function partOption(along: Name, from: Name, to: Name): Option {
  const named = { along: { named: along }, from: { named: from }, to: { named: to } };
  return { value: { along, from, to } as never, words: message('table.part-option', named), lights: along };
}

function headings(sheet: Sheet, shown: (name: Name) => boolean): Option[] {
  const lines = [...sheet.shapes].filter(([name, shape]) => shape.kind === 'line' && shown(name)).map(([name]) => name);
  return [
    ...lines.map(
      (name): Option => ({
        value: { along: name },
        words: message('table.heading-along', { name: { named: name } }),
        lights: name,
      }),
    ),
    ...lines.map(
      (name): Option => ({
        value: { square: name },
        words: message('table.heading-square', { name: { named: name } }),
        lights: name,
      }),
    ),
  ];
}
