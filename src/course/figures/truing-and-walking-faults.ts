import type { Name, Step } from '../../drafting/step.ts';
import { wholeCollar } from './collar.ts';
import { besideShoulder, collarPiece, pieceHides } from './collar-piece.ts';
import type { Fault } from './fault.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('amara', { ...usualStyle, fall: '2 in', 'lapel-width': '4 in', 'collar-end': '1 3/4 in' });

/** The collar beside the shoulder, with the neck edge as it was trued or as it was filled in. */
function atShoulder(id: string, steps: readonly Step[], right: readonly Name[] = []): Scene {
  return {
    id,
    order,
    steps: [...steps, ...collarPiece],
    shows: ['shoulder-line', 'neck-point'],
    right,
    hides: [...pieceHides, 'gorge-corner', 'collar-back', 'outer-edge'],
    labels: ['neck-point', 'collar-neck-edge'],
    cloth: [{ outline: 'collar-piece', side: 'right' }],
    box: besideShoulder,
  };
}

/** The dip filled in. */
export const dipFilled: Fault = {
  id: 'fault-dip-filled',
  right: atShoulder('fault-dip-filled-right', wholeCollar),
  wrong: atShoulder(
    'fault-dip-filled-wrong',
    wholeCollar.flatMap((step): readonly Step[] =>
      step.name === 'collar-neck-edge'
        ? [
            { ...step, name: 'edge-as-trued' },
            { verb: 'seam', name: 'collar-neck-edge', run: ['collar-back', 'gorge-corner', 'notch'] },
          ]
        : [step],
    ),
    ['edge-as-trued'],
  ),
};

/** Garment and collar laid edge to edge, drawn out straight for the picture. `shoulder` is where the collar's mark lies. */
function laidTogether(id: string, shoulder: number): Scene {
  const mark = (name: Name, x: number, y: number): Step => ({ verb: 'pencil', name, at: [x, y] });
  return {
    id,
    order,
    steps: [
      mark('a', 0, 5),
      mark('b', 0, 27),
      mark('c', 120, 27),
      mark('d', 120, 5),
      { verb: 'seam', name: 'garment', run: ['a', 'b', 'c', 'd', 'a'] },
      mark('e', 0, -5),
      mark('f', 0, -27),
      mark('g', 120, -27),
      mark('h', 120, -5),
      { verb: 'seam', name: 'collar', run: ['e', 'f', 'g', 'h', 'e'] },
      mark('i', 48, 5),
      mark('j', 48, 27),
      { verb: 'seam', name: 'shoulder-seam', run: ['i', 'j'] },
      mark('k', shoulder, -5),
      mark('l', shoulder, -14),
      { verb: 'seam', name: 'shoulder-mark', run: ['k', 'l'] },
    ],
    shows: [],
    given: ['garment', 'shoulder-seam'],
    hides: [...'abcdefghijkl'],
    labels: ['garment', 'collar', 'shoulder-seam', 'shoulder-mark'],
    cloth: [
      { outline: 'garment', side: 'right' },
      { outline: 'collar', side: 'right' },
    ],
    box: { min: { x: -12, y: -42 }, max: { x: 132, y: 42 } },
  };
}

/** The shoulder mark beside the shoulder seam, with both ends meeting. */
export const shoulderOff: Fault = {
  id: 'fault-shoulder-off',
  right: laidTogether('fault-shoulder-off-right', 48),
  wrong: laidTogether('fault-shoulder-off-wrong', 62),
};

/** A marking tape, 1/8 in wide. */
const tape: readonly Step[] = [
  { verb: 'pencil', name: 'tape-start', at: [-28, -7] },
  { verb: 'pencil', name: 'tape-low', at: [-10, -1] },
  { verb: 'pencil', name: 'tape-high', at: [10, 2] },
  { verb: 'pencil', name: 'tape-end', at: [28, 9] },
  { verb: 'curve', name: 'upper', through: ['tape-start', 'tape-low', 'tape-high', 'tape-end'] },
  { verb: 'offset', name: 'lower', of: 'upper', distance: '1/8 in', side: 'down' },
  { verb: 'along', name: 'change-over', on: 'upper', from: 'tape-low', distance: '12 mm', toward: 'tape-end' },
  { verb: 'along', name: 'change-under', on: 'lower', from: 'change-over', distance: '0 mm', toward: 'right' },
  { verb: 'along', name: 'under-start', on: 'lower', from: 'tape-start', distance: '0 mm', toward: 'right' },
  { verb: 'along', name: 'under-end', on: 'lower', from: 'tape-end', distance: '0 mm', toward: 'left' },
  {
    verb: 'seam',
    name: 'marking-tape',
    run: ['upper', 'tape-end', 'under-end', 'lower', 'under-start', 'tape-start'],
  },
];

/** The tape, and what was drawn along it. */
function besideTape(id: string, line: readonly Step[], right: readonly Name[] = []): Scene {
  return {
    id,
    order,
    steps: [...tape, ...line],
    shows: [],
    given: ['marking-tape'],
    right,
    // What the tape was made from.
    hides: tape.map(({ name }) => name).filter((name) => name !== 'marking-tape'),
    labels: ['marking-tape', 'line-as-drawn'],
    cloth: [{ outline: 'marking-tape', side: 'right' }],
    box: { min: { x: -38, y: -20 }, max: { x: 38, y: 22 } },
  };
}

/** Drawn along one side of the tape, and then along the other. */
export const tapeSides: Fault = {
  id: 'fault-tape-sides',
  right: besideTape('fault-tape-sides-right', [{ verb: 'seam', name: 'line-as-drawn', run: ['upper'] }]),
  wrong: besideTape('fault-tape-sides-wrong', [
    {
      verb: 'seam',
      name: 'line-as-drawn',
      run: [
        { along: 'upper', from: 'tape-start', to: 'change-over' },
        'change-over',
        'change-under',
        { along: 'lower', from: 'change-under', to: 'under-end' },
      ],
    },
  ]),
};

const shaky: readonly (readonly [number, number])[] = [
  [-66, -30],
  [-42, -12],
  [-20, -5],
  [2, 12],
  [26, 17],
  [50, 33],
];
const shakyNames = shaky.map((_, index): Name => `mark-${index + 1}`);

/** Marks as they come off cloth, and what was drawn by them. */
function byMarks(id: string, line: Step): Scene {
  return {
    id,
    order,
    steps: [...shaky.map((at, index): Step => ({ verb: 'pencil', name: `mark-${index + 1}`, at })), line],
    shows: [],
    labels: ['line-as-drawn'],
    box: { min: { x: -80, y: -42 }, max: { x: 64, y: 45 } },
  };
}

/** Marks joined dot to dot. */
export const dotToDot: Fault = {
  id: 'fault-dot-to-dot',
  right: byMarks('fault-dot-to-dot-right', {
    verb: 'curve',
    name: 'line-as-drawn',
    through: ['mark-1', 'mark-2', 'mark-5', 'mark-6'],
  }),
  wrong: byMarks('fault-dot-to-dot-wrong', { verb: 'seam', name: 'line-as-drawn', run: shakyNames }),
};
