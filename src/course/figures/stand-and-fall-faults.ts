import type { Step } from '../../drafting/step.ts';
import { behind } from './behind.ts';
import type { Fault } from './fault.ts';
import type { Scene } from './scene.ts';
import { backLaid } from './stand-and-fall.ts';

/** The fall no longer than the stand. */
export const noCover: Fault = {
  id: 'fault-no-cover',
  right: behind('fault-no-cover-right', 'stand + cover-by-rule'),
  wrong: behind('fault-no-cover-wrong', 'stand'),
};

/** Stand and fall exchanged. */
export const exchanged: Fault = {
  id: 'fault-exchanged',
  right: behind('fault-exchanged-right', 'fall'),
  wrong: behind('fault-exchanged-wrong', '1 1/4 in', { stand: '1 3/4 in' }),
};

const { handles: _, ...live } = backLaid;
/** Higher and wider than the live figure: the wrong strip is longer, and a pair is drawn small. */
const laid: Omit<Scene, 'id'> = {
  ...live,
  labels: ['neck-point', 'back-neckline', 'centre-back', 'roll-line'],
  box: { min: { x: -105, y: 345 }, max: { x: 215, y: 605 } },
};

/** The front neckline laid off in place of the back neck. */
export const frontForBack: Fault = {
  id: 'fault-front-for-back',
  right: { ...laid, id: 'fault-front-for-back-right' },
  wrong: {
    ...laid,
    id: 'fault-front-for-back-wrong',
    steps: laid.steps.flatMap((step): readonly Step[] => {
      if (step.name !== 'back-neck') return [step];
      const right: readonly Step[] = [
        { verb: 'tape', name: 'true-back', along: 'back-neckline' },
        { verb: 'parallel', name: 'true-line', to: 'roll-line', through: 'neck-point' },
        { verb: 'along', name: 'true-end', on: 'true-line', from: 'neck-point', distance: 'true-back', toward: 'up' },
        { verb: 'square', name: 'true-across', to: 'true-line', through: 'true-end' },
        {
          verb: 'along',
          name: 'true-outer',
          on: 'true-across',
          from: 'true-end',
          distance: 'stand + fall',
          toward: 'left',
        },
        { verb: 'seam', name: 'end-as-it-should-be', run: ['true-end', 'true-outer'] },
      ];
      return [...right, { verb: 'tape', name: 'back-neck', along: 'front-neckline' }];
    }),
    shows: [...laid.shows, 'front-neckline'],
    hides: [...(laid.hides ?? []), 'true-line', 'true-end', 'true-across', 'true-outer'],
    right: ['end-as-it-should-be'],
    labels: ['neck-point', 'front-neckline', 'roll-line'],
  } satisfies Scene,
};
