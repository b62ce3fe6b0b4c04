import type { Sheet } from '../../drafting/sheet.ts';
import { draw } from '../../table/drawing/draw.ts';
import type { ClothPart, Drawing } from '../../table/drawing/drawing.ts';
import type { Unit } from '../../words/unit.ts';
import { AuthoringError } from '../authoring-error.ts';
import { type Scene, type SceneCloth, sceneGivens, sceneSheet } from './scene.ts';

/** A scene as a drawing, ready to be put on a page. */
export function paint(scene: Scene, unit: Unit): Drawing {
  const sheet = sceneSheet(scene);
  return draw(sheet, {
    given: new Set(sceneGivens(scene).shapes.keys()),
    shows: scene.shows,
    help: new Set(scene.help),
    hides: new Set(scene.hides),
    labels: new Set(scene.labels),
    box: scene.box,
    unit,
    cloth: (scene.cloth ?? []).map((area) => cloth(scene, sheet, area)),
  });
}

function cloth({ id }: Scene, sheet: Sheet, { outline, side }: SceneCloth): ClothPart {
  const shape = sheet.shapes.get(outline);
  if (shape?.kind !== 'curve') {
    throw new AuthoringError(`The figure “${id}” lays cloth on “${outline}”, and the draft makes no curve of that name.`);
  }
  return { kind: 'cloth', name: outline, tone: 'made', outline: shape.path, side };
}
