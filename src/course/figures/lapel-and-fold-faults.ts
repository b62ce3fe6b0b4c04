import type { Expression, Name, Step } from '../../drafting/step.ts';
import { frontHelp, lapelCloth, lapelDesigned } from './collar.ts';
import type { Fault } from './fault.ts';
import { bodyCloth, bodyHelp } from './front.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

const order = orderOf('noor', usualStyle);
const box = { min: { x: -150, y: -40 }, max: { x: 215, y: 460 } };
const hides: readonly Name[] = [
  ...frontHelp.filter((name) => name !== 'stand-point'),
  ...bodyHelp,
  'gorge-worn',
  'gorge-corner',
  'notch',
  'roll-top',
  'lapel',
];

const edged: readonly Step[] = [
  ...lapelDesigned,
  { verb: 'curve', name: 'lapel-edge-worn', through: ['lapel-point-worn', 'break-point'] },
];

/** The lapel cut from the design as worn, folded over this line. */
function foldedOver(line: Name): readonly Step[] {
  return [
    { verb: 'fold', name: 'lapel-point', what: 'lapel-point-worn', over: line },
    { verb: 'curve', name: 'lapel-edge', through: ['lapel-point', 'break-point'] },
    ...lapelCloth,
    ...bodyCloth,
  ];
}

/** The piece of cloth, cut along this run. */
function piece(run: readonly Name[]): Step {
  return {
    verb: 'seam',
    name: 'piece',
    run: [...run, 'gorge-corner', 'neck-point', 'shoulder-tip', 'foot-side', 'foot-edge', 'break-point'],
  };
}

const flat: Omit<Scene, 'id' | 'steps'> = {
  order,
  shows: [],
  hides: [...hides, 'front-edge', 'neck-edge', 'lapel-worn', 'lapel-point-worn', 'lapel-point', 'lapel-edge-worn'],
  labels: ['roll-line', 'break-point'],
  cloth: [{ outline: 'piece', side: 'right' }],
  box,
};

/** Cut where it is worn: nothing is left to turn back. */
export const notFolded: Fault = {
  id: 'fault-not-folded',
  right: {
    ...flat,
    id: 'fault-not-folded-right',
    steps: [...edged, ...foldedOver('roll-line'), piece(['break-point', 'lapel-edge', 'lapel-point', 'roll-top'])],
  },
  wrong: {
    ...flat,
    id: 'fault-not-folded-wrong',
    steps: [
      ...edged,
      ...foldedOver('roll-line'),
      piece(['break-point', 'lapel-edge-worn', 'lapel-point-worn', 'roll-top']),
    ],
    hides: [...(flat.hides ?? []), 'lapel-edge'],
  },
};

const worn: Omit<Scene, 'id' | 'steps'> = {
  order,
  shows: ['centre-front'],
  given: ['neck-edge'],
  hides: [...hides, 'lapel-point', 'lapel-edge', 'lapel-point-worn', 'lapel-edge-worn'],
  labels: ['centre-front', 'roll-line', 'break-point'],
  cloth: [
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: { ...box, min: { x: -85, y: -40 } },
};

/** Folded over the centre front: turned back on its roll line, it lies elsewhere than designed. */
export const overCentreFront: Fault = {
  id: 'fault-fold-line',
  right: { ...worn, id: 'fault-fold-line-right', steps: [...edged, ...foldedOver('roll-line')] },
  wrong: {
    ...worn,
    id: 'fault-fold-line-wrong',
    steps: [
      ...edged,
      ...foldedOver('centre-front'),
      { verb: 'seam', name: 'as-designed', run: ['break-point', 'lapel-edge-worn', 'lapel-point-worn', 'roll-top'] },
    ],
    right: ['as-designed'],
  },
};

/** The edge bowed by this much toward a side, as it is worn. */
function bowed(id: string, by: Expression): Scene {
  return {
    ...worn,
    id,
    steps: [
      ...edged,
      { verb: 'rule', name: 'straight-edge', from: 'lapel-point-worn', to: 'break-point' },
      { verb: 'part', name: 'edge-middle', from: 'lapel-point-worn', to: 'break-point', fraction: '1/2' },
      { verb: 'square', name: 'bow-line', to: 'straight-edge', through: 'edge-middle' },
      { verb: 'along', name: 'bow-mark', on: 'bow-line', from: 'edge-middle', distance: by, toward: 'right' },
      { verb: 'curve', name: 'bowed-edge', through: ['lapel-point-worn', 'bow-mark', 'break-point'] },
      { verb: 'fold', name: 'lapel-point', what: 'lapel-point-worn', over: 'roll-line' },
      { verb: 'fold', name: 'lapel-edge', what: 'bowed-edge', over: 'roll-line' },
      ...lapelCloth,
      ...bodyCloth,
    ],
    hides: [...(worn.hides ?? []), 'straight-edge', 'edge-middle', 'bow-line', 'bow-mark', 'bowed-edge'],
    labels: ['roll-line', 'break-point'],
  };
}

/** The edge hollowed. */
export const hollowEdge: Fault = {
  id: 'fault-hollow-edge',
  right: bowed('fault-hollow-edge-right', '1/4 in'),
  wrong: bowed('fault-hollow-edge-wrong', '-5/8 in'),
};
