import { LAYERS, type Layer, layersOf } from './layers.ts';

/**
 * Takes what moves off a picture onto one that lies over it, and lays it back where it was: while something is dragged, a
 * browser need not go through all that lies still, nor paint it again where the other passes over it.
 */
export class Lift {
  readonly #layers = layersOf();
  /** What keeps the place of each element that was taken off. */
  readonly #places = new Map<SVGElement, Comment>();
  #over: SVGGElement | null = null;

  /** From now on things are taken onto `over`; null: no more, and all are laid back. */
  onto(over: SVGGElement | null): void {
    this.#over = over;
    if (over) over.append(...LAYERS.map((layer) => this.#layers[layer]));
    else for (const node of [...this.#places.keys()]) this.#layBack(node);
  }

  /** Takes an element up, where anything is and it is not taken up yet. */
  take(node: SVGElement, layer: Layer): void {
    if (this.#over === null || this.#places.has(node)) return;
    const place = document.createComment('');
    node.replaceWith(place);
    this.#places.set(node, place);
    this.#layers[layer].append(node);
  }

  /** Takes an element away, wherever it is. */
  drop(node: SVGElement): void {
    this.#places.get(node)?.remove();
    this.#places.delete(node);
    node.remove();
  }

  #layBack(node: SVGElement): void {
    this.#places.get(node)?.replaceWith(node);
    this.#places.delete(node);
  }
}
