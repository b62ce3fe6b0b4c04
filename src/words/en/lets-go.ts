import { entry } from '../entry.ts';

/** Where a draft that is right on its own figure lets go on others, and what to do about it. */
export const letsGo = {
  'grader.lets-go-by-eye': entry(
    ['step', 'name', 'target'],
    'On other figures the {target} lets go at step {step}: {name} is a mark made by eye, and stays where it is when the figure changes. Lay it off from the block, or mark it where two lines cross, instead.',
  ),
  'grader.lets-go-number': entry(
    ['step', 'target', 'typed'],
    'On other figures the {target} lets go at step {step}: {typed} is a typed number, and stays the same on every order. Use the measure it stands for.',
  ),
  'grader.lets-go-number-named': entry(
    ['step', 'target', 'typed', 'instead'],
    'On other figures the {target} lets go at step {step}: {typed} is a typed number, and stays the same on every order. Here it happens to equal {instead}: write that, and the draft follows the order.',
  ),
  'grader.lets-go': entry(
    ['step', 'name', 'target'],
    'On other figures the {target} lets go at step {step}: {name} is right on this figure, but what it is made from does not bring it there on others.',
  ),
};
