import { bodyCloth, bodyHelp, breakPoint, lapel, lapelHelp, overlapEdge, rollLine } from './front.ts';
import { otherLapel, otherLapelHelp } from './other-lapel.ts';
import { orderOf, type Scene } from './scene.ts';
import { usualStyle } from './styles.ts';

/** Both fronts with their lapels turned back; the one on top can be dragged, and the other answers. */
export const homeRoll: Scene = {
  id: 'home-roll',
  order: orderOf('amara', usualStyle),
  steps: [
    ...overlapEdge,
    ...breakPoint,
    ...rollLine,
    ...lapel,
    ...bodyCloth,
    { verb: 'tape', name: 'roll-length', from: 'break-point', to: 'stand-point' },
    ...otherLapel({ roll: 'roll-line', breakPoint: 'break-point', tip: 'lapel-point', top: 'roll-top' }),
    { verb: 'fold', name: 'other-neck', what: 'neck-edge', over: 'centre-front' },
  ],
  handles: [
    { drags: 'measure', measure: 'break-rise', by: 'break-point', from: 0, to: 200 },
    { drags: 'measure', measure: 'stand', by: 'stand-point', from: 12, to: 50 },
  ],
  shows: ['centre-front', 'shoulder-line', 'neck-point'],
  given: ['neck-edge', 'other-lapel', 'other-neck'],
  hides: [...lapelHelp, ...bodyHelp, 'break-level', 'overlap-edge', 'lapel', ...otherLapelHelp],
  labels: ['centre-front', 'break-point', 'roll-line', 'neck-point', 'stand-point', 'front-edge'],
  cloth: [
    { outline: 'other-body', side: 'right' },
    { outline: 'other-lapel', side: 'other' },
    { outline: 'body', side: 'right' },
    { outline: 'lapel-worn', side: 'other' },
  ],
  box: { min: { x: -205, y: -55 }, max: { x: 205, y: 470 } },
};
