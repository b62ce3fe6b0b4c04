import type { Name, Step } from '../../drafting/step.ts';

/** A strip of the front about the waist, wide enough to show how two fronts close. Needs `overlap-edge`. */
export const strip: readonly Step[] = [
  { verb: 'parallel', name: 'strip-top', to: 'waist', distance: '55 mm', side: 'up' },
  { verb: 'parallel', name: 'strip-foot', to: 'waist', distance: '75 mm', side: 'down' },
  { verb: 'parallel', name: 'strip-side', to: 'centre-front', distance: '105 mm', side: 'right' },
  { verb: 'cross', name: 'top-edge', one: 'strip-top', other: 'overlap-edge' },
  { verb: 'cross', name: 'foot-edge', one: 'strip-foot', other: 'overlap-edge' },
  { verb: 'cross', name: 'top-side', one: 'strip-top', other: 'strip-side' },
  { verb: 'cross', name: 'foot-side', one: 'strip-foot', other: 'strip-side' },
  { verb: 'seam', name: 'upper-front', run: ['top-edge', 'top-side', 'foot-side', 'foot-edge', 'top-edge'] },
];

/** The other front, underneath: the same piece, mirrored over the centre front. */
export const underFront: readonly Step[] = [
  { verb: 'fold', name: 'under-front', what: 'upper-front', over: 'centre-front' },
  { verb: 'fold', name: 'under-edge', what: 'overlap-edge', over: 'centre-front' },
];

/** The helpers of both. */
export const stripHelp: readonly Name[] = [
  'strip-top',
  'strip-foot',
  'strip-side',
  'top-edge',
  'foot-edge',
  'top-side',
  'foot-side',
];

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
