import { holdOnBodies, LONG_LESSONS } from './hold-on-bodies.ts';

holdOnBodies((lesson) => !LONG_LESSONS.includes(lesson));
