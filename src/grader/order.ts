import type { Expression, Name } from '../drafting/step.ts';
import type { Figure } from '../garment/figure.ts';

/** One jacket for one person: the figure, the style measures and the house rules a draft is made to. */
export interface Order {
  readonly figure: Figure;
  readonly style: Readonly<Record<Name, Expression>>;
  /** House rule to the choice in force. */
  readonly house: Readonly<Record<string, string>>;
}
