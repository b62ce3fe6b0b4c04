import { holdOnBodies } from './hold-on-bodies.ts';

holdOnBodies((lesson) => lesson === 'outer-edge');
