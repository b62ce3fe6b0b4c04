import type { Point } from '../../geometry/point.ts';
import type { Drawing, Part } from '../drawing/drawing.ts';
import { keyOf } from '../drawing/key.ts';
import { figure } from '../drawing/path-data.ts';
import type { Grip } from './awake-sheet.ts';
import { classesOf } from './classes.ts';
import { LAYERS, layerOf, layersOf } from './layers.ts';
import { Lift } from './lift.ts';
import { penned, tagOf } from './pen.ts';
import { made, set } from './svg.ts';

type Stroke = SVGPathElement | SVGLineElement;

interface Ring {
  readonly node: SVGCircleElement;
  readonly grip: Grip;
}

/** How far the ring about something that can be held is from its middle, px. */
export function ringOf({ handle }: Grip): number {
  return handle ? 7 : 10;
}

/** Keeps the board's elements in step with drawings: makes what is new, moves what moved, takes away what went. */
export class Painter {
  readonly #layers = layersOf();
  readonly #lift = new Lift();
  readonly #sheet = made('g', {});
  readonly #hatch: string;
  readonly #painted = new Map<string, Stroke>();
  readonly #rings = new Map<string, Ring>();
  #scale = Number.NaN;
  #parts: ReadonlySet<Part> = new Set();

  /** Paints on the picture in `root`, over the paper there that `id` names. */
  constructor(root: SVGSVGElement, id: string) {
    this.#hatch = `url(#${id}-awake-hatch)`;
    this.#sheet.append(...LAYERS.map((layer) => this.#layers[layer]));
    root.append(this.#sheet);
  }

  /** Puts the sheet's origin at a place of the picture, px. */
  move({ x, y }: Point): void {
    set(this.#sheet, { transform: `translate(${figure(x)} ${figure(y)})` });
  }

  /** From now on what changes is painted on a picture that lies over this one; null: all lies in this one again. */
  lift(over: SVGGElement | null): void {
    this.#lift.onto(over);
  }

  /**
   * Paints at `scale` pixels a mm. A part or grip that is the very one of the last time is not looked at, and nothing of the
   * picture is touched that has not changed: the browser would go through it.
   */
  paint(drawing: Drawing, grips: readonly Grip[], scale: number): void {
    const scaled = scale !== this.#scale;
    this.#scale = scale;
    this.#paintParts(new Set(drawing.parts), scaled);
    this.#holdGrips(grips, scaled);
  }

  #paintParts(parts: ReadonlySet<Part>, scaled: boolean): void {
    const before = this.#parts;
    this.#parts = parts;
    const fresh = [...parts].filter((part) => scaled || !before.has(part));
    const wanted = new Map(fresh.map((part) => [keyOf(part), part]));
    for (const gone of before) if (!parts.has(gone) && !wanted.has(keyOf(gone))) this.#takeAway(keyOf(gone));
    for (const [key, part] of wanted) this.#put(key, part, scaled);
  }

  #takeAway(key: string): void {
    const node = this.#painted.get(key);
    if (node) this.#lift.drop(node);
    this.#painted.delete(key);
  }

  #put(key: string, part: Part, scaled: boolean): void {
    const node = this.#painted.get(key) ?? this.#make(part);
    this.#painted.set(key, node);
    if (!scaled) this.#lift.take(node, layerOf(part));
    set(node, penned(part, this.#scale));
  }

  #make(part: Part): Stroke {
    const node = made(tagOf(part), { class: classesOf(part).join(' ') });
    if (part.kind === 'cloth' && part.side === 'other') node.style.fill = this.#hatch;
    this.#layers[layerOf(part)].append(node);
    return node;
  }

  #holdGrips(grips: readonly Grip[], scaled: boolean): void {
    const held = new Set(grips.map(({ key }) => key));
    for (const [key, { node }] of this.#rings) {
      if (held.has(key)) continue;
      this.#lift.drop(node);
      this.#rings.delete(key);
    }
    for (const grip of grips) if (scaled || this.#rings.get(grip.key)?.grip !== grip) this.#hold(grip, scaled);
  }

  #hold(grip: Grip, scaled: boolean): void {
    const node = this.#rings.get(grip.key)?.node ?? this.#ring(grip);
    this.#rings.set(grip.key, { node, grip });
    if (!scaled) this.#lift.take(node, 'grip');
    set(node, { cx: figure(grip.at.x * this.#scale), cy: figure(-grip.at.y * this.#scale) });
  }

  #ring(grip: Grip): SVGCircleElement {
    const kind = grip.handle ? 'handle' : 'mark';
    const node = made('circle', { class: `grip grip--${kind}`, r: String(ringOf(grip)) });
    this.#layers.grip.append(node);
    return node;
  }
}
