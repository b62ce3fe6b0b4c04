import { expect, test } from 'vitest';
import { en } from '../../src/words/en/index.ts';
import type { Message } from '../../src/words/message.ts';
import { draft } from './block.ts';
import { greedySteps } from './greedy.ts';

const mark = (name: string, x: number, y: number) => ({ verb: 'pencil', name, at: [x, y] });
const beside = (distance: unknown) => ({ verb: 'parallel', name: 'n', to: 'waist', distance, side: 'up' });
const foot = (from: unknown, on: unknown = 'waist') => ({ verb: 'foot', name: 'n', from, on });
const along = (more: object) => ({
  verb: 'along',
  name: 'n',
  on: 'neckline',
  from: 'neck-point',
  distance: '1 cm',
  toward: 'down',
  ...more,
});
const compass = (more: object) => ({
  verb: 'compass',
  name: 'n',
  about: 'neck-point',
  radius: '8 cm',
  on: 'centre-front',
  near: 'up',
  ...more,
});
const curve = (more: object) => ({ verb: 'curve', name: 'n', through: ['neck-point', 'shoulder-tip'], ...more });
const offset = (more: object) => ({
  verb: 'offset',
  name: 'n',
  of: 'neckline',
  distance: '1 cm',
  side: 'down',
  ...more,
});
const seam = (...run: readonly unknown[]) => ({ verb: 'seam', name: 'n', run });
const level = [mark('p', 0, 0), mark('q', 80, 0), { verb: 'curve', name: 'level', through: ['p', 'q'] }];
const wave = [
  mark('p', 0, -10),
  mark('q', 40, 30),
  mark('r', 80, -10),
  { verb: 'curve', name: 'wave', through: ['p', 'q', 'r'] },
];
const crossWave = (more: object) => [...wave, { verb: 'cross', name: 'n', one: 'wave', other: 'waist', ...more }];
const ring = Array.from({ length: 24 }, () => ['neck-point', 'front-neck-point', 'shoulder-tip', 'neck-point']).flat();
const growing = [
  { verb: 'seam', name: 's0', run: ring },
  ...Array.from({ length: 6 }, (_, i) => ({ verb: 'seam', name: `s${i + 1}`, run: [`s${i}`, `s${i}`] })),
];

/** For every sentence about a draft, a draft that brings it about. */
const brings: Readonly<Record<string, readonly unknown[]>> = {
  'expression.empty': [beside(' ')],
  'expression.too-long': [beside('1'.repeat(201))],
  'expression.character': [beside('stand ? 2')],
  'expression.comma': [beside('3,2 cm')],
  'expression.point': [beside('3 cm.')],
  'expression.times': [beside('stand x 2')],
  'expression.unit-spelt': [beside('3.2 cms')],
  'expression.stops': [beside('stand +')],
  'expression.no-value': [beside('/ 2')],
  'expression.no-sign': [beside('2 stand')],
  'expression.bracket-open': [beside('(stand')],
  'expression.bracket-close': [beside('stand)')],
  'expression.word': [beside('stand less fall')],
  'expression.two-names': [beside('back neck')],
  'expression.unit-alone': [beside('cm')],
  'expression.unit-after-name': [beside('stand cm')],
  'expression.space-minus': [beside('stand-6 mm')],
  'expression.unknown': [beside('hem')],
  'expression.unknown-meant': [beside('stnad')],
  'expression.unknown-minus': [beside('fall-stand')],
  'expression.zero': [beside('stand / 0')],
  'expression.too-large': [beside('999999 * 999999 mm')],
  'expression.unlike': [beside('stand + shoulder-slope')],
  'expression.no-unit': [beside('stand + 6')],
  'expression.product': [beside('stand * fall')],
  'expression.quotient': [beside('2 / stand')],
  'expression.bare-length': [beside('stand / fall')],
  'expression.bare-figure': [beside('25')],
  'expression.bare-angle': [
    { verb: 'slant', name: 'n', to: 'waist', angle: '9', turn: 'clockwise', through: 'neck-point' },
  ],
  'expression.wanted': [beside('22 deg')],
  'expression.not-length': [beside('waist + 1 cm')],
  'problem.not-a-step': [5],
  'problem.verb-missing': [{ name: 'n' }],
  'problem.name-missing': [{ verb: 'pencil', at: [0, 0] }],
  'problem.unknown-verb': [{ verb: 'cut', name: 'n' }],
  'problem.name-form': [mark('No', 0, 0)],
  'problem.name-reserved': [mark('up', 0, 0)],
  'problem.name-given': [mark('waist', 0, 0)],
  'problem.name-twice': [mark('n', 0, 0), mark('n', 1, 1)],
  'problem.blank': [{ verb: 'foot', name: 'n', from: 'neck-point' }],
  'problem.unreadable': [beside(25)],
  'problem.too-few': [curve({ through: ['neck-point'] })],
  'problem.unknown': [foot('elsewhere')],
  'problem.unknown-meant': [foot('neck-pont')],
  'problem.unknown-way': [along({ toward: 'above' })],
  'problem.not-there': [mark('m', 1e6, 0), foot('m')],
  'problem.made-later': [foot('m'), mark('m', 0, 0)],
  'problem.itself': [foot('n')],
  'problem.kind': [foot('neck-point', 'neckline')],
  'problem.measure': [foot('stand')],
  'problem.ends': [{ verb: 'tape', name: 'n', along: 'waist' }],
  'problem.ends-join': [{ verb: 'seam', name: 'n', run: ['waist', 'neckline'] }],
  'problem.one-end': [{ verb: 'tape', name: 'n', along: 'neckline', to: 'neck-point' }],
  'problem.no-sense': [along({ on: 'waist', toward: 'up' })],
  'problem.no-side': [{ ...beside('1 cm'), side: 'left' }],
  'problem.toward-here': [along({ toward: 'neck-point' })],
  'problem.side-on': [offset({ side: 'neck-point' })],
  'problem.side-beyond': [...level, mark('past', 99, 0), offset({ of: 'level', side: 'past' })],
  'problem.several': crossWave({}),
  'problem.tie': crossWave({ near: 'up' }),
  'problem.tie-point': crossWave({ near: 'q' }),
  'problem.tie-place': crossWave({ near: [40, 0] }),
  'problem.parallel': [beside('1 cm'), { verb: 'cross', name: 'm', one: 'n', other: 'waist' }],
  'problem.no-cross': [{ verb: 'cross', name: 'n', one: 'waist', other: 'neckline' }],
  'problem.itself-cross': [{ verb: 'cross', name: 'n', one: 'waist', other: 'waist' }],
  'problem.out-of-reach': [compass({ radius: '2 cm' })],
  'problem.out-of-reach-hair': [compass({ radius: '69.9 mm' })],
  'problem.too-wide': [compass({ radius: '90 cm', on: 'neckline' })],
  'problem.no-radius': [compass({ radius: '0 mm' })],
  'problem.off-end': [along({ distance: '40 cm' })],
  'problem.off-end-hair': [{ verb: 'tape', name: 't', along: 'neckline' }, along({ distance: 't + 0.2 mm' })],
  'problem.same-place': [{ verb: 'rule', name: 'n', from: 'neck-point', to: 'neck-point' }],
  'problem.points-meet': [curve({ through: ['neck-point', 'neck-point'] })],
  'problem.doubles-back': [curve({ through: ['neck-point', 'shoulder-tip', 'neck-point'] })],
  'problem.heading-square': [mark('p', 70, 0), curve({ through: ['p', 'neck-point'], leave: { along: 'waist' } })],
  'problem.shape-count': [curve({ shape: [null] })],
  'problem.no-parallel': [offset({ distance: '40 cm', side: 'left' })],
  'problem.seam-empty': [seam('neck-point')],
  'problem.seam-gap': [seam('neckline', 'shoulder-tip')],
  'problem.seam-midway': [
    { verb: 'along', name: 'p', on: 'neckline', from: 'neck-point', distance: '3 cm', toward: 'front-neck-point' },
    seam('p', 'neckline'),
  ],
  'problem.seam-gap-hair': [mark('p', 70, 400.2), seam('neckline', 'p')],
  'problem.part-empty': [seam({ along: 'waist', from: 'neck-point', to: 'neck-point' })],
  'problem.below-zero': [{ verb: 'tape', name: 'n', length: 'stand - fall' }],
  'problem.swing-radius': [
    { verb: 'swing', name: 'n', what: 'waist', about: 'neck-point', by: '1 cm', at: '0 cm', turn: 'clockwise' },
  ],
  'problem.off-sheet': [mark('n', 1e6, 0)],
  'problem.too-much-work': greedySteps,
  'problem.too-many': growing,
  'problem.too-long-list': [seam(...Array.from({ length: 101 }, () => 'neck-point'))],
};

const keyOf = (message: Message): string => ('key' in message ? message.key : message.text);

test.each(Object.entries(brings))('%s is said where it should be', (key, steps) => {
  expect(draft(steps).problems.map(({ message }) => keyOf(message))).toContain(key);
});

test('every sentence about a draft is said somewhere', () => {
  const said = Object.keys(en).filter((key) => /^(problem|expression)\./.test(key));
  expect(said.filter((key) => !(key in brings))).toEqual([]);
});
