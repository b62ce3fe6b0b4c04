import type { Figure } from './figure.ts';
import type { SurveyGroup } from './survey.ts';

/** An invented customer: nobody's measures, but anybody's range. */
export interface Person {
  readonly id: string;
  readonly name: string;
  readonly group: SurveyGroup;
  readonly figure: Figure;
  /** What a cutter would write on the order. */
  readonly note: string;
}

function person(
  name: string,
  group: SurveyGroup,
  [neckBase, shoulder, slope, frontWaist, backWaist]: readonly [number, number, number, number, number],
  note: string,
): Person {
  const figure = {
    'neck-base': neckBase,
    shoulder,
    'shoulder-slope': slope,
    'front-waist': frontWaist,
    'back-waist': backWaist,
  };
  return { id: name.toLowerCase(), name, group, figure, note };
}

/** Twelve invented figures across the range of adult women and men. Lengths in mm, slopes in degrees. */
export const people: readonly Person[] = [
  person('Amara', 'women', [370, 135, 22.5, 354, 424], 'Regular in every measure. Begin here.'),
  person('Ingrid', 'women', [386, 148, 17, 402, 478], 'Tall and long in the waist. Square shoulders.'),
  person('Mei', 'women', [334, 118, 23, 312, 372], 'Small all over, short in the waist.'),
  person('Lucia', 'women', [412, 121, 28, 371, 429], 'Full neck, narrow shoulders that slope.'),
  person('Noor', 'women', [338, 152, 20, 346, 415], 'Slender neck, wide shoulders.'),
  person('Kerttu', 'women', [361, 138, 21, 396, 402], 'Stands very erect: long in front, short behind.'),
  person('Tane', 'men', [434, 150, 22.5, 388, 478], 'Regular in every measure.'),
  person('Ravi', 'men', [392, 134, 24, 341, 430], 'Small and short in the waist.'),
  person('Oluwaseun', 'men', [492, 168, 19, 446, 540], 'Large and long. Wide square shoulders.'),
  person('Mateo', 'men', [447, 146, 25, 343, 516], 'Head forward, back rounded: short in front, long behind.'),
  person('Sione', 'men', [498, 139, 29, 392, 462], 'Thick neck, shoulders slope a great deal.'),
  person('Yusuf', 'men', [405, 162, 20, 428, 531], 'Tall and spare, long in the waist.'),
];

/** The invented figure with this id; null when there is none. */
export function personNamed(id: string): Person | null {
  return people.find((one) => one.id === id) ?? null;
}
