import type { WornPlan } from '../../garment/collar/worn-plan.ts';

/** The lapel alone, with the notch and its level. */
export const lapelAlone: WornPlan = {
  over: 'roll-line',
  folds: ['break-point', 'lapel-edge', 'lapel-point', 'notch', 'gorge-corner'],
  stays: ['gorge-corner', 'neck-point', 'shoulder-tip'],
  notch: 'notch',
  level: 'collarbone-level',
};

/** The lapel alone, before anything is said of its notch. */
export const lapelOnly: WornPlan = {
  over: 'roll-line',
  folds: ['break-point', 'lapel-edge', 'lapel-point', 'notch', 'gorge-corner'],
  stays: ['gorge-corner', 'neck-point', 'shoulder-tip'],
};
