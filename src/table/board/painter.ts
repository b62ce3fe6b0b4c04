import type { Drawing, Part } from '../drawing/drawing.ts';
import { keyOf } from '../drawing/key.ts';
import type { Grip, SheetEvents } from './awake-sheet.ts';
import { classesOf } from './classes.ts';
import { JXG } from './jsxgraph-core.js';
import { dataOf, sameTrace, type Trace } from './trace.ts';

type Drawn = JXG.GeometryElement & { rendNode: SVGElement };

/** An element as it is brought up to date by itself. */
interface Updated {
  prepareUpdate(): Updated;
  update(): Updated;
  updateVisibility(): Updated;
  updateRenderer(): Updated;
}

interface Painted {
  readonly element: Drawn;
  trace: Trace;
}

/** Layers of the board, bottom to top. */
const LAYERS: Readonly<Record<Part['kind'], number>> = { cloth: 1, band: 2, line: 5, curve: 5, arrow: 7, mark: 8 };
const FAINT_LAYER = 3;
const GRIP_LAYER = 9;

/** Bare elements: the style sheet says how they look, by the same classes as the built SVG. */
const BARE = {
  fixed: true,
  highlight: false,
  withLabel: false,
  name: '',
  // Brought up to date by `paint`, and with the whole board when it is moved or stretched.
  needsRegularUpdate: false,
  fillColor: 'none',
  lineCap: 'round',
  tabindex: null,
};

/** Keeps the board's elements in step with drawings: makes what is new, moves what moved, takes away what went. */
export class Painter {
  readonly #board: JXG.Board;
  readonly #hatch: string;
  readonly #events: SheetEvents;
  readonly #painted = new Map<string, Painted>();
  readonly #grips = new Map<string, JXG.Point>();

  constructor(board: JXG.Board, id: string, events: SheetEvents) {
    this.#board = board;
    this.#hatch = `url(#${id}-awake-hatch)`;
    this.#events = events;
  }

  /** At a move of the pointer one line changes of fifty: only what did is looked at, and not the board. */
  paint(drawing: Drawing, grips: readonly Grip[]): void {
    this.#board.suspendUpdate();
    const wanted = new Map(drawing.parts.map((part) => [keyOf(part), part]));
    this.#takeAway(wanted, grips);
    const changed = [
      ...[...wanted].filter(([key, part]) => this.#put(key, part)).map(([key]) => this.#painted.get(key)?.element),
      ...grips.map((grip) => this.#hold(grip)),
    ];
    // Ended without `unsuspendUpdate`, which would bring everything up to date.
    (this.#board as unknown as { isSuspendedUpdate: boolean }).isSuspendedUpdate = false;
    for (const element of changed)
      (element as Updated | null | undefined)?.prepareUpdate().update().updateVisibility().updateRenderer();
  }

  #takeAway(wanted: ReadonlyMap<string, Part>, grips: readonly Grip[]): void {
    for (const [key, { element }] of this.#painted) {
      if (wanted.has(key)) continue;
      this.#board.removeObject(element as never);
      this.#painted.delete(key);
    }
    const held = new Set(grips.map(({ key }) => key));
    for (const [key, point] of this.#grips) {
      if (held.has(key)) continue;
      this.#board.removeObject(point as never);
      this.#grips.delete(key);
    }
  }

  /** Puts a part on the board; says whether anything changed. */
  #put(key: string, part: Part): boolean {
    const painted = this.#painted.get(key);
    if (!painted) {
      this.#make(key, part);
      return true;
    }
    if (part.kind === 'mark') return move(painted.element as unknown as JXG.Point, part.at.x, part.at.y);
    const before = painted.trace;
    painted.trace = dataOf(part);
    return !sameTrace(before, painted.trace);
  }

  #make(key: string, part: Part): void {
    const layer = part.kind === 'line' && part.faint ? FAINT_LAYER : LAYERS[part.kind];
    const element = part.kind === 'mark' ? this.#mark(part.at.x, part.at.y, layer) : this.#curve(key, part, layer);
    const painted: Painted = { element, trace: dataOf(part) };
    this.#painted.set(key, painted);
    element.rendNode.classList.add(...classesOf(part));
    if (part.kind === 'cloth' && part.side === 'other') element.rendNode.style.fill = this.#hatch;
  }

  #mark(x: number, y: number, layer: number): Drawn {
    return this.#board.create('point', [x, y], { ...BARE, layer, face: 'x', size: 4.5 }) as unknown as Drawn;
  }

  /** A curve whose data are looked up afresh at every update of the board. */
  #curve(key: string, part: Part, layer: number): Drawn {
    const width = part.kind === 'band' ? () => part.half * 2 * this.#board.unitX : 1;
    const curve = this.#board.create('curve', [[0], [0]], {
      ...BARE,
      layer,
      strokeWidth: width,
    } as never) as unknown as JXG.Curve & {
      dataX: number[];
      dataY: number[];
      bezierDegree: number;
    };
    const first = dataOf(part);
    curve.updateDataArray = () => {
      const { xs, ys, degree } = this.#painted.get(key)?.trace ?? first;
      curve.dataX = [...xs];
      curve.dataY = [...ys];
      curve.bezierDegree = degree;
    };
    return curve as unknown as Drawn;
  }

  /** Puts a grip on the board; gives it where anything changed. */
  #hold(grip: Grip): JXG.Point | null {
    const held = this.#grips.get(grip.key);
    if (held) return move(held, grip.at.x, grip.at.y) ? held : null;
    const point = this.#board.create('point', [grip.at.x, grip.at.y], {
      ...BARE,
      // The board itself drags it.
      needsRegularUpdate: true,
      fixed: false,
      layer: GRIP_LAYER,
      face: 'circle',
      size: grip.kind === 'mark' ? 9 : 6,
    }) as unknown as JXG.Point;
    (point as unknown as Drawn).rendNode.classList.add('grip', `grip--${grip.kind}`);
    point.on('drag', () => this.#events.onHandle(grip.key, { x: point.X(), y: point.Y() }));
    point.on('up', () => this.#events.onLetGo());
    this.#grips.set(grip.key, point);
    return point;
  }
}

/** Moves a point where it is not there already; says whether it did. */
function move(point: JXG.Point, x: number, y: number): boolean {
  if (point.X() === x && point.Y() === y) return false;
  point.setPositionDirectly(JXG.COORDS_BY_USER, [x, y]);
  return true;
}
