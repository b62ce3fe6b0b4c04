import type { Step } from '../../src/drafting/step.ts';
import { type Figure, measureRanges } from '../../src/garment/figure.ts';
import { personNamed } from '../../src/garment/people.ts';

/** A collar draft as a book gives it, in inches, written as expressions of the drafting language. */
export interface PublishedCollar {
  readonly source: string;
  /** On whom it is drafted here: the books give no measures of the neck. */
  readonly figure: Figure;
  readonly stand: string;
  readonly fall: string;
  readonly neckPointToRoll: string;
  /** Along the roll line, past the mark beside the neck point. */
  readonly past: string;
  /** Laid off there, square to the roll line; null where the book gives none. */
  readonly swing: string | null;
}

const figureOf = (id: string): Figure => personNamed(id)?.figure ?? never();

export const vincent: PublishedCollar = {
  source: 'W. D. F. Vincent, The Cutters’ Practical Guide to the Cutting of Ladies’ Garments, p. 48, Diagram 105',
  figure: figureOf('amara'),
  stand: '1 1/4 in',
  fall: '1 3/4 in',
  neckPointToRoll: '1 in',
  past: 'back-neck + 1/2 in',
  swing: '1/2 in',
};

export const stepCollar: PublishedCollar = {
  source: 'A. A. Whife (ed.), The Modern Tailor, Outfitter and Clothier, 4th ed., 1949, vol. 1, Diagram 25 A',
  figure: figureOf('tane'),
  stand: '1 in',
  fall: '1 5/8 in',
  neckPointToRoll: '1 in',
  past: 'back-neck + 1/2 in',
  swing: '5/8 in',
};

export const shawlCollar: PublishedCollar = {
  source: 'A. A. Whife (ed.), The Modern Tailor, Outfitter and Clothier, 4th ed., 1949, vol. 1, Diagram 25 B',
  figure: figureOf('tane'),
  stand: '1 1/8 in',
  fall: '2 in',
  neckPointToRoll: '1 1/4 in',
  past: 'back-neck + 3/4 in',
  swing: '1/2 in',
};

export const convertible: PublishedCollar = {
  source: 'I. Rosenfeld, The Practical Designer, 1918, p. 135, size 36',
  // A size 36 is ASTM D5585-11e1's size 8, bust 36 1/4 in: neck base 14 5/8 in. The other measures are a regular figure's.
  figure: {
    ...figureOf('amara'),
    'neck-base': 14.625 * 25.4,
    'shoulder-slope': measureRanges['shoulder-slope'].otherwise ?? never(),
  },
  stand: '1 in',
  fall: '2 1/2 in',
  neckPointToRoll: '1 in',
  past: '3 1/2 in',
  swing: null,
};

/**
 * The draft, as the books make it: the roll line run on past the shoulder, swung back there about the mark beside the neck
 * point, squared at the centre back, the stand laid off to one side and the fall to the other. Under it what the course's
 * own method says of the same collar on the same front.
 */
export function stepsOf({ stand, fall, neckPointToRoll, past, swing }: PublishedCollar): readonly Step[] {
  return [
    { verb: 'parallel', name: 'overlap-edge', to: 'centre-front', distance: '1 1/4 in', side: 'left' },
    { verb: 'parallel', name: 'break-level', to: 'waist', distance: '1 1/2 in', side: 'up' },
    { verb: 'cross', name: 'break-point', one: 'overlap-edge', other: 'break-level' },
    { verb: 'tape', name: 'stand', length: stand },
    { verb: 'tape', name: 'fall', length: fall },
    { verb: 'tape', name: 'back-neck', along: 'back-neckline' },
    {
      verb: 'along',
      name: 'stand-point',
      on: 'shoulder-line',
      from: 'neck-point',
      distance: neckPointToRoll,
      toward: 'left',
    },
    { verb: 'rule', name: 'roll-line', from: 'break-point', to: 'stand-point' },
    { verb: 'tape', name: 'past', length: past },
    { verb: 'along', name: 'crease-end', on: 'roll-line', from: 'stand-point', distance: 'past', toward: 'up' },
    // The course's own: the joined seam's turn, the gain it needs, and the swing that gives it, at the same place.
    { verb: 'parallel', name: 'neck-line', to: 'roll-line', through: 'neck-point' },
    { verb: 'along', name: 'gorge-corner', on: 'neck-line', from: 'neck-point', distance: '2 1/8 in', toward: 'down' },
    { verb: 'seam', name: 'joined', run: ['back-neckline', 'neck-point', 'gorge-corner'] },
    { verb: 'protractor', name: 'phi', along: 'joined' },
    { verb: 'tape', name: 'gain-needed', length: '(fall - stand) * phi' },
    { verb: 'tape', name: 'swing-needed', length: 'past * (gain-needed / (stand + fall))' },
    ...drawn(swing ?? 'swing-needed'),
  ];
}

function drawn(swing: string): readonly Step[] {
  return [
    { verb: 'tape', name: 'swing', length: swing },
    {
      verb: 'swing',
      name: 'swung-end',
      what: 'crease-end',
      about: 'stand-point',
      by: 'swing',
      at: 'past',
      turn: 'clockwise',
    },
    { verb: 'rule', name: 'crease', from: 'stand-point', to: 'swung-end' },
    { verb: 'square', name: 'collar-centre-back', to: 'crease', through: 'swung-end' },
    {
      verb: 'along',
      name: 'neck-back',
      on: 'collar-centre-back',
      from: 'swung-end',
      distance: 'stand',
      toward: 'right',
    },
    {
      verb: 'along',
      name: 'outer-back',
      on: 'collar-centre-back',
      from: 'swung-end',
      distance: 'fall',
      toward: 'left',
    },
    { verb: 'protractor', name: 'swing-angle', from: 'roll-line', to: 'crease' },
    { verb: 'tape', name: 'gain-drawn', length: '(stand + fall) * swing-angle' },
  ];
}

function never(): never {
  throw new Error('not there');
}
