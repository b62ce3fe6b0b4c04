import * as v from 'valibot';
import { NAME_LENGTH } from '../../drafting/limits.ts';
import { expression, fields, list, name, named, text, word } from '../reading/fields.ts';
import type { ToleranceClass } from '../tolerance.ts';
import { tolerances } from '../tolerance.ts';

/** The form of an exercise file: which fields it has and what may stand in them. Names are looked up afterwards. */

const classes = Object.keys(tolerances) as [ToleranceClass, ...ToleranceClass[]];

/** Steps are read by the reader of the drafting language, which speaks of them by number and name. */
const steps = v.custom<readonly unknown[]>((value) => Array.isArray(value), 'wants.steps');

const common = {
  target: name('wants.target'),
  tolerance: word(classes, 'wants.tolerance'),
  marks: v.pipe(
    v.number('wants.marks'),
    v.integer('wants.marks'),
    v.minValue(1, 'wants.marks'),
    v.maxValue(100, 'wants.marks'),
  ),
  why: text('wants.why'),
  mend: text('wants.mend'),
  least: v.exactOptional(expression('wants.expression')),
  most: v.exactOptional(expression('wants.expression')),
};

const object = name('wants.object');

const check = v.variant(
  'measure',
  [
    fields({ measure: v.literal('position'), ...common }, 'wants.check'),
    fields({ measure: v.literal('distance'), from: object, ...common }, 'wants.check'),
    fields(
      { measure: v.literal('line'), between: v.strictTuple([object, object], 'wants.between'), ...common },
      'wants.check',
    ),
    fields(
      {
        measure: v.literal('squareness'),
        to: object,
        end: v.exactOptional(word(['start', 'end'], 'wants.end')),
        ...common,
      },
      'wants.check',
    ),
    fields(
      {
        measure: v.literal('parallel'),
        from: object,
        at: v.union([object, v.strictTuple([object, object], 'wants.between')], 'wants.at'),
        ...common,
      },
      'wants.check',
    ),
    fields({ measure: v.literal('length'), ...common }, 'wants.check'),
    fields(
      {
        measure: v.literal('walk'),
        against: list(object, 'wants.against', 1),
        between: v.exactOptional(v.strictTuple([object, object], 'wants.between')),
        ...common,
      },
      'wants.check',
    ),
    fields(
      {
        measure: v.literal('through'),
        point: object,
        where: word(['start', 'end', 'anywhere'], 'wants.where'),
        ...common,
      },
      'wants.check',
    ),
    fields({ measure: v.literal('level'), ...common }, 'wants.check'),
    fields({ measure: v.literal('bow'), ...common }, 'wants.check'),
    fields({ measure: v.literal('shape'), ...common }, 'wants.check'),
    fields(
      { measure: v.literal('smoothness'), corners: v.exactOptional(list(object, 'wants.corners', 1)), ...common },
      'wants.check',
    ),
    fields({ measure: v.literal('inflection'), ...common }, 'wants.check'),
    fields({ measure: v.literal('bend'), over: word(['whole', 'stretch'], 'wants.over'), ...common }, 'wants.check'),
    fields({ measure: v.literal('angle'), ...common }, 'wants.check'),
  ],
  'wants.measure',
);

const target = fields(
  {
    name: name('wants.name'),
    makes: word(['point', 'line', 'curve', 'length', 'angle'], 'wants.kind'),
    hints: v.strictTuple([text('wants.hint'), text('wants.hint'), text('wants.hint')], 'wants.hints'),
  },
  'wants.target-fields',
);

const misreading = fields(
  {
    id: name('wants.name'),
    target: name('wants.target'),
    instead: steps,
    first: v.exactOptional(steps),
    says: text('wants.says'),
  },
  'wants.misreading',
);

const styleGiven = fields(
  {
    value: expression('wants.length'),
    from: expression('wants.length'),
    to: expression('wants.length'),
    about: v.exactOptional(text('wants.style-about', 200)),
  },
  'wants.style-given',
);

const figure = v.union(
  [
    fields({ named: text('wants.person', NAME_LENGTH) }, 'wants.figure'),
    fields({ sampled: word(['women', 'men', 'anyone'], 'wants.group') }, 'wants.figure'),
  ],
  'wants.figure',
);

const shaken = fields({ marks: list(object, 'wants.marks-shaken', 1), by: expression('wants.length') }, 'wants.shaken');

const worn = fields(
  {
    over: object,
    folds: v.exactOptional(list(object, 'wants.worn-run', 2)),
    turns: v.exactOptional(list(object, 'wants.worn-run', 2)),
    until: v.exactOptional(object),
    stays: v.exactOptional(list(object, 'wants.worn-run', 2)),
    seam: v.exactOptional(list(object, 'wants.worn-run', 2)),
    notch: v.exactOptional(object),
    level: v.exactOptional(object),
  },
  'wants.worn',
);

export const exerciseForm = fields(
  {
    title: text('wants.title', 200),
    lesson: text('wants.lesson', NAME_LENGTH),
    brief: text('wants.brief'),
    figure,
    style: named(styleGiven, 'wants.style'),
    house: named(name('wants.house-choice'), 'wants.house'),
    applies: v.exactOptional(list(name('wants.house-rule'), 'wants.applies', 1)),
    shows: list(object, 'wants.shows', 1),
    given: v.exactOptional(steps),
    shaken: v.exactOptional(shaken),
    targets: list(target, 'wants.targets', 1),
    reference: steps,
    checks: list(check, 'wants.checks', 1),
    misreadings: list(misreading, 'wants.misreadings'),
    worn: v.exactOptional(worn),
  },
  'wants.exercise',
);
