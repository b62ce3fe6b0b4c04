import type { Part } from './drawing.ts';

/** Tells the parts of one drawing apart: by the object, or, where a part shows none, by its place. */
export function keyOf(part: Part): string {
  const faint = part.kind === 'line' && part.faint ? 'faint' : 'firm';
  return `${part.kind}/${part.tone}/${faint}/${part.name ?? placeOf(part)}`;
}

function placeOf(part: Part): string {
  if (part.kind === 'mark') return `${part.at.x},${part.at.y}`;
  if (part.kind === 'cloth') return part.side;
  if (part.kind === 'line' || part.kind === 'arrow') return `${part.from.x},${part.from.y},${part.to.x},${part.to.y}`;
  return JSON.stringify(part.path[0]);
}
