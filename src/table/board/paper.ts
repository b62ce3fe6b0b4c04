import type { Size, View } from './view.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** The marking paper under a board: dots that move and grow with the sheet, and the hatch of the cloth's other side. */
export interface Paper {
  readonly move: (view: View, size: Size) => void;
  readonly rule: (dots: number) => void;
}

export function layPaper(host: HTMLElement, id: string): Paper {
  const root = host.querySelector('svg') as SVGSVGElement;
  root.setAttribute('aria-hidden', 'true');
  const defs = made('defs', {});
  const dot = made('circle', { class: 'paper-dot', cx: '0.6', cy: '0.6', r: '0.6' });
  const dots = made('pattern', { id: `${id}-awake-dots`, patternUnits: 'userSpaceOnUse', width: '10', height: '10' });
  const hatch = made('pattern', {
    id: `${id}-awake-hatch`,
    patternUnits: 'userSpaceOnUse',
    width: '7',
    height: '7',
    patternTransform: 'rotate(45)',
  });
  hatch.append(made('path', { class: 'cloth-hatch', d: 'M0 0V7' }));
  dots.append(dot);
  defs.append(dots, hatch);
  const sheet = made('rect', { class: 'paper' });
  const dotted = made('rect', { class: 'paper-dots', fill: `url(#${id}-awake-dots)` });
  root.prepend(defs, sheet, dotted);
  return {
    move: ({ scale, origin }, { width, height }) => {
      for (const rectangle of [sheet, dotted]) set(rectangle, { width: String(width), height: String(height) });
      set(dots, { patternTransform: `translate(${origin.x} ${origin.y}) scale(${scale})` });
    },
    rule: (spacing) => set(dots, { width: String(spacing), height: String(spacing) }),
  };
}

function made(tag: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS(SVG, tag);
  set(element, attributes);
  return element;
}

function set(element: SVGElement, attributes: Readonly<Record<string, string>>): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
}
