import { holdOnBodies } from './hold-on-bodies.ts';

holdOnBodies((lesson) => lesson === 'from-draft-to-pattern');
