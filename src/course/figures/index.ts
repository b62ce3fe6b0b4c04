import * as breakPoint from './break-point.ts';
import * as draftToPattern from './from-draft-to-pattern.ts';
import * as formToTable from './from-form-to-table.ts';
import * as home from './home.ts';
import * as lapelAndFold from './lapel-and-fold.ts';
import * as notchPlacement from './notch-placement.ts';
import * as otherCollars from './other-collars.ts';
import * as outerEdge from './outer-edge.ts';
import * as overlap from './overlap.ts';
import * as rollLine from './roll-line.ts';
import type { Scene } from './scene.ts';
import * as standAndFall from './stand-and-fall.ts';
import * as truing from './truing-and-walking.ts';
import * as walkDrag from './walk-drag.ts';
import * as worked from './worked.ts';

/** Every figure of the lessons, by id. */
export const scenes: ReadonlyMap<string, Scene> = new Map(
  [
    home,
    overlap,
    breakPoint,
    rollLine,
    lapelAndFold,
    notchPlacement,
    standAndFall,
    outerEdge,
    truing,
    walkDrag,
    draftToPattern,
    otherCollars,
    formToTable,
    worked,
  ]
    .flatMap((lesson): readonly Scene[] => Object.values(lesson))
    .map((scene) => [scene.id, scene]),
);
