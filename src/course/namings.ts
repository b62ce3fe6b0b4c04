import type { Naming } from './authoring-error.ts';

export const termNaming: Naming = { written: '<Term of="…">', kept: 'content/glossary/en.yaml' };
export const sourceNaming: Naming = { written: '<Cite of="…">', kept: 'content/sources/en.yaml' };
export const sceneNaming: Naming = { written: 'A figure', kept: 'src/course/figures' };
export const faultNaming: Naming = { written: '<Pair of="…">', kept: 'src/course/figures' };
export const exerciseNaming: Naming = { written: 'The head of a lesson', kept: 'exercises' };
