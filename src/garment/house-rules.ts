import type { Expression, Name } from '../drafting/step.ts';

/** One way of doing it, where honest handbooks differ. */
export interface HouseChoice {
  readonly name: string;
  /** The measure the choice gives, and the measures that takes. */
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
];
