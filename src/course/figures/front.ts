import type { Step } from '../../drafting/step.ts';

/** The front edge of a jacket: parallel to the centre front, at the overlap. */
export const overlapEdge: readonly Step[] = [
  { verb: 'parallel', name: 'overlap-edge', to: 'centre-front', distance: 'overlap', side: 'left' },
];

/** The break point: on the overlap edge, at the break level. */
export const breakPoint: readonly Step[] = [
  { verb: 'parallel', name: 'break-level', to: 'waist', distance: 'break-rise', side: 'up' },
  { verb: 'cross', name: 'break-point', one: 'overlap-edge', other: 'break-level' },
];

/** The roll line: from the break point to the shoulder line ruled on past the neck point by the stand. */
export const rollLine: readonly Step[] = [
  {
    verb: 'along',
    name: 'stand-point',
    on: 'shoulder-line',
    from: 'neck-point',
    distance: 'stand-by-rule',
    toward: 'left',
  },
  { verb: 'rule', name: 'roll-line', from: 'break-point', to: 'stand-point' },
];

/**
 * A lapel for a roll line, as a style and not as a thing to learn yet: designed as worn on the body side, its notch on
 * a level below the collarbone level, then folded over the roll line.
 */
export const lapel: readonly Step[] = [
  { verb: 'parallel', name: 'notch-level', to: 'collarbone-level', distance: 'notch-drop', side: 'down' },
  { verb: 'parallel', name: 'notch-run', to: 'roll-line', distance: 'notch-width', side: 'right' },
  { verb: 'cross', name: 'notch-worn', one: 'notch-level', other: 'notch-run' },
  { verb: 'fold', name: 'notch', what: 'notch-worn', over: 'roll-line' },
  { verb: 'parallel', name: 'neck-run', to: 'roll-line', through: 'neck-point' },
  { verb: 'along', name: 'gorge-corner', on: 'neck-run', from: 'neck-point', distance: 'gorge-depth', toward: 'down' },
  { verb: 'rule', name: 'gorge', from: 'gorge-corner', to: 'notch' },
  { verb: 'cross', name: 'roll-top', one: 'gorge', other: 'roll-line' },
  { verb: 'parallel', name: 'lapel-run', to: 'roll-line', distance: 'lapel-width', side: 'left' },
  { verb: 'cross', name: 'lapel-point', one: 'gorge', other: 'lapel-run' },
  { verb: 'seam', name: 'lapel', run: ['break-point', 'lapel-point', 'roll-top', 'break-point'] },
  { verb: 'fold', name: 'lapel-worn', what: 'lapel', over: 'roll-line' },
];

/** Helpers of the lapel that a figure has no need to show. */
export const lapelHelp = [
  'notch-level',
  'notch-run',
  'notch-worn',
  'notch',
  'neck-run',
  'gorge-corner',
  'gorge',
  'roll-top',
  'lapel-run',
  'lapel-point',
] as const;

/** The cloth that lies on the body: the front right of the roll line and of the overlap edge, down to `hem`. */
export const bodyCloth: readonly Step[] = [
  { verb: 'parallel', name: 'side', to: 'centre-front', through: 'shoulder-tip' },
  { verb: 'parallel', name: 'foot', to: 'waist', distance: '90 mm', side: 'down' },
  { verb: 'cross', name: 'foot-side', one: 'foot', other: 'side' },
  { verb: 'cross', name: 'foot-edge', one: 'foot', other: 'overlap-edge' },
  {
    verb: 'seam',
    name: 'body',
    run: [
      'break-point',
      'roll-top',
      'gorge-corner',
      'neck-point',
      'shoulder-tip',
      'foot-side',
      'foot-edge',
      'break-point',
    ],
  },
  { verb: 'seam', name: 'front-edge', run: ['break-point', 'foot-edge'] },
  { verb: 'seam', name: 'neck-edge', run: ['roll-top', 'gorge-corner', 'neck-point'] },
];

export const bodyHelp = ['side', 'foot', 'foot-side', 'foot-edge', 'body'] as const;
