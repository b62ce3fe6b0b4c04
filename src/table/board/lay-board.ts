import type { Box } from '../drawing/box.ts';
import type { AwakeSheet, SheetEvents } from './awake-sheet.ts';
import { JXG } from './jsxgraph-core.js';
import { Painter } from './painter.ts';
import { layPaper } from './paper.ts';
import { boxIn, fitView, resizedView, type Size, type View } from './view.ts';

/** How far one may zoom, in pixels a mm. */
const CLOSEST = 40;
const FURTHEST = 0.2;

/** Lays a JSXGraph board over the host, showing the box as the built SVG shows it. */
export function layBoard(host: HTMLElement, box: Box, id: string, events: SheetEvents): AwakeSheet {
  let size: Size = { width: host.clientWidth, height: host.clientHeight };
  const board = JXG.JSXGraph.initBoard(host, {
    boundingBox: boundingBox(boxIn(fitView(box, size), size)),
    axis: false,
    keepAspectRatio: true,
    renderer: 'svg',
    showCopyright: false,
    showNavigation: false,
    showInfobox: false,
    keyboard: { enabled: false },
    // One finger scrolls the page; two move and stretch the sheet. A mouse moves it by its empty places.
    browserPan: true,
    pan: { enabled: true, needShift: false, needTwoFingers: true },
    zoom: { enabled: true, wheel: false, needShift: false, pinch: true, pinchHorizontal: false, pinchVertical: false },
    resize: { enabled: false },
    // Moves that come faster than this are dropped, the last one too, and a dragged mark would stop short of the pointer.
    maxFrameRate: 1000,
  } as never) as unknown as JXG.Board;
  host.style.touchAction = 'pan-y';
  spareMoves(board);

  const paper = layPaper(host, id);
  const painter = new Painter(board, id, events);
  const viewNow = (): View => ({
    scale: board.unitX,
    origin: { x: board.origin.scrCoords[1] as number, y: board.origin.scrCoords[2] as number },
  });
  const show = (view: View): void => {
    board.setBoundingBox(boundingBox(boxIn(view, size)) as never, true, 'update');
  };
  const tell = (): void => {
    paper.move(viewNow(), size);
    events.onView(viewNow());
  };
  board.on('boundingbox', tell);
  board.resizeContainer(size.width, size.height, true, true);
  show(fitView(box, size));
  tell();

  return {
    paint: (drawing, grips) => {
      paper.rule(drawing.dots);
      painter.paint(drawing, grips);
    },
    show,
    zoom: (factor, about) => {
      const { scale, origin } = viewNow();
      const next = Math.min(CLOSEST, Math.max(FURTHEST, scale * factor));
      const still = about ?? { x: size.width / 2, y: size.height / 2 };
      const keep = (at: number, from: number) => at - ((at - from) * next) / scale;
      show({ scale: next, origin: { x: keep(still.x, origin.x), y: keep(still.y, origin.y) } });
    },
    resize: (next) => {
      const view = resizedView(viewNow(), box, size, next);
      if (view === null) return;
      size = next;
      board.resizeContainer(next.width, next.height, true, true);
      show(view);
    },
    view: viewNow,
    size: () => size,
    destroy: () => JXG.JSXGraph.freeBoard(board),
  };
}

/**
 * What the board does at every move of the pointer, and need not here: asking each element whether the pointer is on it, for
 * none of ours lights up by itself; and looking for transforms on all that the board lies in, for no page has any.
 */
function spareMoves(board: JXG.Board): void {
  const own = board as unknown as {
    highlightElements: () => void;
    updateCSSTransforms: () => unknown;
    cssTransMat: readonly (readonly number[])[];
  };
  own.highlightElements = () => undefined;
  own.updateCSSTransforms = () => board;
  own.cssTransMat = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
}

function boundingBox({ min, max }: Box): [number, number, number, number] {
  return [min.x, max.y, max.x, min.y];
}
