import type { Part } from '../drawing/drawing.ts';

/** The style sheet's classes for a part: the ones the built SVG carries. */
export function classesOf(part: Part): string[] {
  switch (part.kind) {
    case 'line':
      return ['ink', `ink--${part.tone}`, ...(part.faint ? ['ink--faint'] : [])];
    case 'curve':
      return ['ink', `ink--${part.tone}`];
    case 'arrow':
      return ['ink', `ink--${part.tone}`, 'ink--arrow'];
    case 'band':
      return ['band', `band--${part.tone}`];
    case 'mark':
      return ['mark', `mark--${part.tone}`];
    default:
      return ['cloth', `cloth--${part.side}`];
  }
}
