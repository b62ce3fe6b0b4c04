import type { Name, Step } from '../../drafting/step.ts';
import { collarHelp, front, frontHelp, lapelCloth, wholeCollar } from './collar.ts';
import type { Fault } from './fault.ts';
import { bodyCloth, bodyHelp } from './front.ts';
import { layers, layersHide } from './layers.ts';
import { cutCollar, cutHides, netCollar, sewnCollar } from './pattern-piece.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** Under and top collar turned over together, the top one cut as long as `cut`. */
function turned(id: string, cut: string): Scene {
  return {
    id,
    order: orderOf('yusuf', {}),
    steps: layers(2.5, cut),
    shows: [],
    given: ['neck-seam'],
    hides: [...layersHide, 'top-start'],
    labels: ['under-collar', 'top-collar', 'under-end', 'top-end'],
    cloth: [{ outline: 'wearer', side: 'right' }],
    box: { min: { x: -24, y: -18 }, max: { x: 40, y: 44 } },
  };
}

/** The top collar cut like the under collar. */
export const cutAlike: Fault = {
  id: 'fault-cut-alike',
  right: turned('fault-cut-alike-right', 'top-length'),
  wrong: turned('fault-cut-alike-wrong', 'under-length'),
};

const allowance = '3/8 in';
const collar: Omit<Scene, 'id' | 'steps'> = {
  order: orderOf('tane', { ...usualStyle, fall: '1 7/8 in', 'gorge-depth': '2 1/8 in', 'collar-end': '1 5/8 in' }),
  shows: [],
  labels: [],
  box: { min: { x: -70, y: 350 }, max: { x: 160, y: 622 } },
};
const collarHides: readonly Name[] = [
  ...frontHelp,
  ...collarHelp,
  ...cutHides,
  ...['break-point', 'roll-line', 'lapel-point', 'lapel-edge', 'gorge-corner', 'notch', 'collar-point'],
  ...['outer-back', 'collar-back', 'collar-neck-edge', 'outer-edge', 'cutting-line', 'collar-end-edge', 'back-cut'],
];

/** The piece cut along its sewing lines: what the seams take is missing. */
export const cutNet: Fault = {
  id: 'fault-cut-net',
  right: {
    ...collar,
    id: 'fault-cut-net-right',
    steps: [
      ...wholeCollar,
      ...netCollar,
      { verb: 'seam', name: 'sewing-line', run: ['collar-piece'] },
      ...cutCollar(allowance),
    ],
    hides: collarHides.filter((name) => name !== 'cutting-line'),
    help: ['sewing-line'],
    labels: ['sewing-line', 'cutting-line'],
    cloth: [{ outline: 'cutting-line', side: 'right' }],
  },
  wrong: {
    ...collar,
    id: 'fault-cut-net-wrong',
    steps: [
      ...wholeCollar,
      ...netCollar,
      ...sewnCollar(allowance),
      { verb: 'seam', name: 'as-it-should-be', run: ['collar-piece'] },
    ],
    hides: collarHides,
    right: ['as-it-should-be'],
    labels: ['sewn'],
    cloth: [{ outline: 'sewn', side: 'right' }],
  },
};

const counts = [1, 2, 3, 4, 5, 6, 7, 8, 9] as const;

/** Some lengthwise threads of the cloth, shown an inch apart in its lower part. They lean from the centre front by `angle`. */
function threads(angle: string): readonly Step[] {
  return [
    { verb: 'pencil', name: 'first-place', at: [-75, 30] },
    { verb: 'slant', name: 'first-way', to: 'centre-front', angle, turn: 'clockwise', through: 'first-place' },
    { verb: 'parallel', name: 'thread-top', to: 'waist', distance: '130 mm', side: 'up' },
    ...counts.flatMap((count): readonly Step[] => [
      { verb: 'parallel', name: `way-${count}`, to: 'first-way', distance: `${count} in`, side: 'right' },
      { verb: 'cross', name: `low-${count}`, one: `way-${count}`, other: 'foot' },
      { verb: 'cross', name: `high-${count}`, one: `way-${count}`, other: 'thread-top' },
      { verb: 'seam', name: `thread-${count}`, run: [`low-${count}`, `high-${count}`] },
    ]),
    { verb: 'parallel', name: 'grain-line', to: 'first-way', distance: '4 in', side: 'right' },
  ];
}

const threadHides: readonly Name[] = [
  ...['first-place', 'first-way', 'thread-top'],
  ...counts.flatMap((count) => [`way-${count}`, `low-${count}`, `high-${count}`]),
];

/** A front laid on cloth whose lengthwise threads lean by `angle` from its centre front. */
function onCloth(id: string, angle: string): Scene {
  return {
    id,
    order: orderOf('ingrid', usualStyle),
    steps: [
      ...front,
      ...lapelCloth,
      ...bodyCloth,
      {
        verb: 'seam',
        name: 'front-piece',
        run: [
          'break-point',
          'lapel-edge',
          'lapel-point',
          'gorge-corner',
          'neck-point',
          'shoulder-tip',
          'foot-side',
          'foot-edge',
          'break-point',
        ],
      },
      ...threads(angle),
    ],
    shows: ['centre-front'],
    help: counts.map((count) => `thread-${count}`),
    hides: [
      ...frontHelp,
      ...bodyHelp,
      ...['lapel', 'lapel-worn', 'lapel-edge', 'lapel-point', 'roll-top', 'gorge-corner', 'notch', 'break-point'],
      ...threadHides,
      ...['roll-line', 'neck-edge', 'front-edge'],
    ],
    labels: ['centre-front', 'grain-line'],
    cloth: [{ outline: 'front-piece', side: 'right' }],
    box: { min: { x: -140, y: -60 }, max: { x: 200, y: 490 } },
  };
}

/** The front cut off the grain. */
export const offGrain: Fault = {
  id: 'fault-off-grain',
  right: onCloth('fault-off-grain-right', '0 deg'),
  wrong: onCloth('fault-off-grain-wrong', '12 deg'),
};
