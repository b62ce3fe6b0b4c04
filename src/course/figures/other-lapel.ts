import type { Name, Step } from '../../drafting/step.ts';

/** The roll line, break point, lapel point and top of a lapel that was drafted on this side for the other front. */
export interface Drafted {
  readonly roll: Name;
  readonly breakPoint: Name;
  readonly tip: Name;
  readonly top: Name;
}

/**
 * The other front's lapel as worn, mirrored over the centre front, as far as it is seen: this front lies on top and
 * covers it right of this front's `roll-line`.
 */
export function otherLapel({ roll, breakPoint, tip, top }: Drafted): readonly Step[] {
  return [
    { verb: 'fold', name: 'other-roll', what: roll, over: 'centre-front' },
    { verb: 'fold', name: 'other-foot', what: breakPoint, over: 'centre-front' },
    { verb: 'fold', name: 'turned-tip', what: tip, over: roll },
    { verb: 'fold', name: 'other-tip', what: 'turned-tip', over: 'centre-front' },
    { verb: 'fold', name: 'other-top', what: top, over: 'centre-front' },
    { verb: 'rule', name: 'other-side', from: 'other-foot', to: 'other-tip' },
    { verb: 'cross', name: 'rolls-cross', one: 'other-roll', other: 'roll-line' },
    { verb: 'cross', name: 'under-roll', one: 'other-side', other: 'roll-line' },
    {
      verb: 'seam',
      name: 'other-lapel',
      run: ['rolls-cross', 'other-top', 'other-tip', 'under-roll', 'rolls-cross'],
    },
    { verb: 'fold', name: 'other-body', what: 'body', over: 'centre-front' },
  ];
}

/** Its helpers. */
export const otherLapelHelp: readonly Name[] = [
  'other-roll',
  'other-foot',
  'turned-tip',
  'other-tip',
  'other-top',
  'other-side',
  'rolls-cross',
  'under-roll',
  'other-body',
];
