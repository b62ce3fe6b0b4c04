import type { Name } from '../../drafting/step.ts';

/** What of a draft turns over when the garment is worn, and what its collar is sewn to. Names are targets or objects; runs are read as a seam's. */
export interface WornPlan {
  /** The line that lapel and collar turn over on. */
  readonly over: Name;
  /** The run round the lapel, from the fold line to the fold line. */
  readonly folds?: readonly Name[];
  /** The run round the collar, from the fold line towards the centre back. */
  readonly turns?: readonly Name[];
  /** Past the square to the fold line through this point the collar goes round the neck and lies flat no more. */
  readonly until?: Name;
  /** The run of the front's own edge that stays where it is, from the fold line to the side. */
  readonly stays?: readonly Name[];
  /** The front's neck seam, from the neck point to the mark where the collar ends. */
  readonly seam?: readonly Name[];
  /** The mark whose place counts as it is worn, and the level it is read from. */
  readonly notch?: Name;
  readonly level?: Name;
}

/** A notched lapel and its collar, by the names the course uses. What a draft does not have yet is not turned. */
export const usualWorn: WornPlan = {
  over: 'roll-line',
  folds: ['break-point', 'lapel-edge', 'lapel-point', 'notch', 'gorge-corner'],
  turns: ['gorge-corner', 'notch', 'collar-point', 'outer-edge'],
  until: 'neck-point',
  stays: ['gorge-corner', 'neck-point', 'shoulder-tip'],
  seam: ['neck-point', 'gorge-corner', 'notch'],
  notch: 'notch',
  level: 'collarbone-level',
};
