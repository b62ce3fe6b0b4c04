import type { Expression, Name } from '../drafting/step.ts';

/** One way of doing it, where honest handbooks differ. */
export interface HouseChoice {
  readonly name: string;
  /** The measure the choice gives, and the measures the order must state for it. */
  readonly gives: Expression;
  readonly uses: readonly Name[];
  readonly source: string;
}

export interface HouseRule {
  readonly name: string;
  /** The measure that a reference draft uses, whatever the choice. */
  readonly makes: Name;
  /** The choice taken where a teacher makes none. */
  readonly usual: string;
  readonly choices: readonly HouseChoice[];
}

/** Every house rule. What each choice means, in a sentence: `house.<rule>.<choice>` in the catalogue. */
export const houseRules: readonly HouseRule[] = [
  {
    name: 'overlap-rule',
    makes: 'overlap-by-rule',
    usual: 'button-half-plus-quarter-inch',
    choices: [
      {
        name: 'button-half-plus-quarter-inch',
        gives: 'button / 2 + 1/4 in',
        uses: ['button'],
        source:
          'Association of Sewing and Design Professionals, Standards of Quality for Custom Clothing, closures: the least lap it accepts.',
      },
      { name: 'twice-the-button', gives: 'button * 2', uses: ['button'], source: 'Common practice, no source.' },
      { name: 'given', gives: 'overlap', uses: ['overlap'], source: 'The order states it.' },
    ],
  },
  {
    name: 'stand-rule',
    makes: 'stand-by-rule',
    usual: 'full',
    choices: [
      {
        name: 'full',
        gives: 'stand',
        uses: ['stand'],
        source:
          'A. A. Whife (ed.), The Modern Tailor, Outfitter and Clothier, 4th ed., 1949, vol. 1, Diagram 25 A; I. Rosenfeld, The Practical Designer, 1918, p. 135.',
      },
      {
        name: 'quarter-inch-less',
        gives: 'stand - 1/4 in',
        uses: ['stand'],
        source:
          'W. D. F. Vincent, The Cutters’ Practical Guide to the Cutting of Ladies’ Garments, p. 48, Diagram 105: 1 in for a stand of 1 1/4 in.',
      },
    ],
  },
  {
    name: 'cover-rule',
    makes: 'cover-by-rule',
    usual: 'eighth-inch-and-turn',
    choices: [
      {
        name: 'eighth-inch-and-turn',
        gives: '1/8 in + cloth-turn',
        uses: ['cloth-turn'],
        source:
          'Turned down, the collar passes the neck seam by 1/8 in; what turning over takes is added. Common practice, no source.',
      },
      {
        name: 'half-inch',
        gives: '1/2 in',
        uses: ['stand'],
        source:
          'W. D. F. Vincent, The Cutters’ Practical Guide to the Cutting of Ladies’ Garments, p. 48, Diagram 105: a fall of 1 3/4 in over a stand of 1 1/4 in.',
      },
      {
        name: 'five-eighths-inch',
        gives: '5/8 in',
        uses: ['stand'],
        source:
          'A. A. Whife (ed.), The Modern Tailor, Outfitter and Clothier, 4th ed., 1949, vol. 1, Diagram 25 A: a fall of 1 5/8 in over a stand of 1 in.',
      },
    ],
  },
  {
    // An edge worked with the iron is swung by another amount, at another place: 1 where it is, 0 where it is not, so that
    // one reference draft serves both.
    name: 'swing-rule',
    makes: 'iron',
    usual: 'measured',
    choices: [
      {
        name: 'measured',
        gives: '0',
        uses: ['stand', 'fall', 'gorge-depth'],
        source:
          'The parallel of a curve is longer by its distance times the turn of the curve (J. Steiner, 1840): docs/method.md. For cloth that is not stretched.',
      },
      {
        name: 'fall-less-stand',
        gives: '1',
        uses: ['stand', 'fall', 'gorge-depth'],
        source:
          'W. D. F. Vincent, The Cutters’ Practical Guide to the Cutting of Ladies’ Garments, p. 48, Diagram 105; A. A. Whife (ed.), The Modern Tailor, Outfitter and Clothier, 4th ed., 1949, vol. 1, Diagram 25 A. For an edge worked with the iron.',
      },
    ],
  },
];
