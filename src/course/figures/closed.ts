import type { Expression, Name, Step } from '../../drafting/step.ts';

/** A strip of the front about the waist, wide enough to show how two fronts close. Needs `overlap-edge`. */
export function strip(up: Expression = '55 mm', down: Expression = '75 mm'): readonly Step[] {
  return [
    { verb: 'parallel', name: 'strip-top', to: 'waist', distance: up, side: 'up' },
    { verb: 'parallel', name: 'strip-foot', to: 'waist', distance: down, side: 'down' },
    { verb: 'parallel', name: 'strip-side', to: 'centre-front', distance: '105 mm', side: 'right' },
    { verb: 'cross', name: 'top-edge', one: 'strip-top', other: 'overlap-edge' },
    { verb: 'cross', name: 'foot-edge', one: 'strip-foot', other: 'overlap-edge' },
    { verb: 'cross', name: 'top-side', one: 'strip-top', other: 'strip-side' },
    { verb: 'cross', name: 'foot-side', one: 'strip-foot', other: 'strip-side' },
    { verb: 'seam', name: 'upper-front', run: ['top-edge', 'top-side', 'foot-side', 'foot-edge', 'top-edge'] },
    { verb: 'cross', name: 'middle-top', one: 'strip-top', other: 'centre-front' },
    { verb: 'cross', name: 'middle-foot', one: 'strip-foot', other: 'centre-front' },
    { verb: 'seam', name: 'middle-line', run: ['middle-top', 'middle-foot'] },
  ];
}

/** The helpers of the strip. */
export const stripHelp: readonly Name[] = [
  'strip-top',
  'strip-foot',
  'strip-side',
  'top-edge',
  'foot-edge',
  'top-side',
  'foot-side',
  'upper-front',
  'middle-top',
  'middle-foot',
];

/** The other front, underneath: the same piece, mirrored over the line the buttons sit on. */
export function underFront(over: Name = 'centre-front'): readonly Step[] {
  return [
    { verb: 'fold', name: 'under-front', what: 'upper-front', over },
    { verb: 'fold', name: 'under-edge', what: 'overlap-edge', over },
  ];
}

/** A button drawn at its size: a smooth curve through four marks, half its diameter from `middle`. It comes out a circle. */
export function button(name: Name, middle: Name): readonly Step[] {
  const part = (of: string): Name => `${name}-${of}`;
  const mark = (toward: 'up' | 'left' | 'down' | 'right', on: Name): Step => ({
    verb: 'along',
    name: part(toward),
    on,
    from: middle,
    distance: 'button / 2',
    toward,
  });
  return [
    { verb: 'parallel', name: part('upright'), to: 'centre-front', through: middle },
    { verb: 'square', name: part('level'), to: 'centre-front', through: middle },
    mark('up', part('upright')),
    mark('left', part('level')),
    mark('down', part('upright')),
    mark('right', part('level')),
    { verb: 'curve', name, through: [part('up'), part('left'), part('down'), part('right'), part('up')] },
  ];
}

/** The helpers of a button. */
export function buttonHelp(name: Name): readonly Name[] {
  return ['upright', 'level', 'up', 'left', 'down', 'right'].map((way) => `${name}-${way}`);
}
