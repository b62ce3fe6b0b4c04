import { entry, plain } from '../entry.ts';

export const grader = {};
