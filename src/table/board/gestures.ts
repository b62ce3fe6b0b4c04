import { between, distance, type Point, subtract } from '../../geometry/point.ts';

/** What a hand does to the board, in pixels from its top left. */
export interface Hands {
  /** What can be held at a place, and where that is; null where there is nothing within `reach`. */
  readonly holdAt: (p: Point, byFinger: boolean) => { readonly key: string; readonly at: Point } | null;
  readonly onHold: (key: string, to: Point) => void;
  readonly onLetGo: () => void;
  /** The paper is moved from one place to another, and stretched by a factor about it. */
  readonly onMove: (from: Point, to: Point, factor: number) => void;
  /** No hand is on the paper any more. */
  readonly onRest: () => void;
}

/** Something held: by which pointer, and how far from that pointer it is. */
interface Held {
  readonly key: string;
  readonly pointer: number;
  readonly off: Point;
}

/**
 * Mouse, pen and fingers on the board. A mark or handle is dragged; the paper is moved by its empty places with a mouse or pen,
 * and moved and stretched with two fingers, for one finger scrolls the page. The pointer is captured meanwhile: the browser then
 * need not look, at each move, what lies under it.
 */
export class Gestures {
  readonly #board: HTMLElement;
  readonly #hands: Hands;
  readonly #over = new AbortController();
  readonly #onPaper = new Map<number, Point>();
  #held: Held | null = null;

  constructor(board: HTMLElement, hands: Hands) {
    this.#board = board;
    this.#hands = hands;
    const until = { signal: this.#over.signal };
    board.addEventListener('pointerdown', (event) => this.#down(event), until);
    board.addEventListener('pointermove', (event) => this.#move(event), until);
    for (const end of ['pointerup', 'pointercancel', 'lostpointercapture'] as const)
      board.addEventListener(end, (event) => this.#up(event), until);
  }

  /** No more of it. */
  end(): void {
    this.#over.abort();
  }

  #down(event: PointerEvent): void {
    if (event.button !== 0 || this.#held) return;
    const at = this.#placeOf(event);
    const found = this.#onPaper.size === 0 ? this.#hands.holdAt(at, isFinger(event)) : null;
    if (found) {
      this.#held = { key: found.key, pointer: event.pointerId, off: subtract(found.at, at) };
      this.#board.dataset.held = '';
      // The focus stays where it is.
      event.preventDefault();
    } else this.#onPaper.set(event.pointerId, at);
    this.#board.setPointerCapture(event.pointerId);
  }

  #move(event: PointerEvent): void {
    const { pointerId } = event;
    const to = this.#placeOf(event);
    if (this.#held?.pointer === pointerId) this.#drag(this.#held, to);
    else if (this.#onPaper.has(pointerId)) this.#shift(pointerId, to, isFinger(event));
  }

  /** Nothing is dragged out of sight. */
  #drag({ key, off }: Held, { x, y }: Point): void {
    const { clientWidth, clientHeight } = this.#board;
    if (x > 0 && y > 0 && x < clientWidth && y < clientHeight) this.#hands.onHold(key, { x: x + off.x, y: y + off.y });
  }

  #shift(pointer: number, to: Point, byFinger: boolean): void {
    const before = [...this.#onPaper.values()];
    this.#onPaper.set(pointer, to);
    const [a, b] = before;
    const [c, d] = [...this.#onPaper.values()];
    if (a && b && c && d) {
      const apart = distance(a, b);
      const factor = apart > 0 ? distance(c, d) / apart : 1;
      this.#hands.onMove(between(a, b, 0.5), between(c, d, 0.5), factor);
    } else if (a && !byFinger) this.#hands.onMove(a, to, 1);
  }

  #up({ pointerId }: PointerEvent): void {
    if (this.#onPaper.delete(pointerId) && this.#onPaper.size === 0) this.#hands.onRest();
    if (this.#held?.pointer !== pointerId) return;
    this.#held = null;
    delete this.#board.dataset.held;
    this.#hands.onLetGo();
  }

  #placeOf({ clientX, clientY }: PointerEvent): Point {
    const { left, top } = this.#board.getBoundingClientRect();
    return { x: clientX - left, y: clientY - top };
  }
}

function isFinger({ pointerType }: PointerEvent): boolean {
  return pointerType === 'touch';
}
