import { made, set } from './svg.ts';
import { REACH, type View } from './view.ts';

/** The marking paper under a board: dots that move and grow with the sheet, and the hatch of the cloth's other side. */
export interface Paper {
  readonly move: (view: View) => void;
  readonly rule: (dots: number) => void;
}

/** Lays marking paper over the whole of a picture, and as far around it as it may be slid. */
export function layPaper(root: SVGSVGElement, id: string): Paper {
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
  const share = (frames: number): string => `${100 * frames}%`;
  const [before, across] = [share(-REACH), share(1 + 2 * REACH)];
  const whole = { x: before, y: before, width: across, height: across };
  root.append(
    defs,
    made('rect', { class: 'paper', ...whole }),
    made('rect', { class: 'paper-dots', fill: `url(#${id}-awake-dots)`, ...whole }),
  );
  let ruled = 10;
  return {
    move: ({ scale, origin }) => set(dots, { patternTransform: `translate(${origin.x} ${origin.y}) scale(${scale})` }),
    // A pattern that is told its size anew, though it be the same, has all of the paper painted again.
    rule: (spacing) => {
      if (spacing === ruled) return;
      ruled = spacing;
      set(dots, { width: String(spacing), height: String(spacing) });
    },
  };
}
