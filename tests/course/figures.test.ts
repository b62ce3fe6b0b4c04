import { describe, expect, test } from 'vitest';
import { faults } from '../../src/course/figures/faults.ts';
import { scenes } from '../../src/course/figures/index.ts';
import { asLive, paint, type Scene, sceneSheet } from '../../src/course/figures/scene.ts';
import { replay } from '../../src/drafting/replay.ts';
import { people } from '../../src/garment/people.ts';
import { dealOrder } from '../../src/grader/deal.ts';
import { dragTo } from '../../src/table/live/constrain.ts';
import { atRest, heldBy } from '../../src/table/live/live-scene.ts';
import { liveSheet, markOn } from '../../src/table/live/live-sheet.ts';
import { readAuthored } from '../../src/words/authored.ts';
import { lessons } from './read-content.ts';

const all: readonly Scene[] = [
  ...scenes.values(),
  ...[...faults.values()].flatMap(({ right, wrong }) => [right, wrong]),
];

describe.each(all)('the figure $id', (scene) => {
  test('replays: every step can be carried out', () => {
    expect(sceneSheet(scene).problems).toEqual([]);
  });

  test('shows, hides, labels and lays cloth only on what its draft makes', () => {
    const { shapes } = sceneSheet(scene);
    const { shows, labels, given = [], right = [], help = [], hides = [], cloth = [] } = scene;
    const named = [...shows, ...labels, ...given, ...right, ...help, ...cloth.map(({ outline }) => outline)];
    expect(named.filter((name) => !shapes.has(name))).toEqual([]);
    expect(cloth.filter(({ outline }) => shapes.get(outline)?.kind !== 'curve')).toEqual([]);
    expect(labels.filter((name) => hides.includes(name) || right.includes(name))).toEqual([]);
  });

  test('lies within its sheet: every mark that is named can be seen', () => {
    const { box, labels } = scene;
    const { shapes } = sceneSheet(scene);
    const outside = labels.filter((name) => {
      const shape = shapes.get(name);
      if (shape?.kind !== 'point') return false;
      const { x, y } = shape.point;
      return x < box.min.x || x > box.max.x || y < box.min.y || y > box.max.y;
    });
    expect(outside).toEqual([]);
    expect(paint(scene, 'cm').parts.length).toBeGreaterThan(0);
  });
});

const live = all.filter(({ handles = [] }) => handles.length > 0);

describe.each(live)('the live figure $id', (scene) => {
  const figure = asLive(scene);

  test('holds every handle by a mark on its sheet', () => {
    const sheet = liveSheet(figure, atRest);
    expect(figure.handles.filter((handle) => markOn(sheet, heldBy(handle)) === null)).toEqual([]);
  });

  test.each(figure.handles)('stands wherever a handle is dragged (%#)', (handle) => {
    const { min, max } = scene.box;
    for (let part = 0.02; part < 1; part += 0.12) {
      const to = { x: min.x + (max.x - min.x) * part, y: min.y + (max.y - min.y) * part };
      const state = dragTo(figure, atRest, handle, to, 'cm');
      const sheet = liveSheet(figure, state);
      // At the very end of its way a mark may lie on another: what joins the two then has no length, and nothing else fails.
      expect(sheet.problems.filter(({ name }) => !ENDS.has(name))).toEqual([]);
    }
  });

  test('says only what its draft has measured', () => {
    const said = lessons
      .map(({ body }) => new RegExp(`<Live\\s+of="${scene.id}"[^>]*?says="([^"]*)"`).exec(body)?.[1])
      .find(Boolean);
    if (scene.id === 'home-roll') return;
    expect(said).toBeDefined();
    const { measures } = sceneSheet(scene);
    const read = readAuthored(said ?? '');
    const names = read.ok ? read.uses : [];
    expect(names.length).toBeGreaterThan(0);
    const compared = Object.entries(scene.compares ?? {});
    expect(names.filter((name) => !measures.has(name) && !compared.some(([one]) => one === name))).toEqual([]);
    expect(compared.flatMap(([, two]) => two).filter((name) => !measures.has(name))).toEqual([]);
  });
});

/** Shapes between two marks that may be brought together. */
const ENDS: ReadonlySet<string> = new Set(['lost-strip', 'collar-cut']);

describe('the constructions taught', () => {
  const taught = all.filter(
    ({ id }) => /^(break-lapel|roll-drag|worked-|home-roll)/.test(id) && id !== 'worked-overlap',
  );

  test.each(taught)('$id draws on every invented figure', ({ order, steps }) => {
    for (const { figure } of people) {
      const dealt = dealOrder({ ...order, figure });
      expect(dealt.ok).toBe(true);
      if (dealt.ok) expect(replay(dealt.givens, steps).problems).toEqual([]);
    }
  });

  test.each(taught)('$id keeps the break point on the overlap edge, never on the centre front', (scene) => {
    const sheet = sceneSheet(scene);
    const overlap = sheet.measures.get('overlap')?.value ?? 0;
    // At least 1 inch on a jacket. Common practice, no source.
    expect(overlap).toBeGreaterThanOrEqual(25.4);
    expect(markOn(sheet, 'break-point')?.x).toBeCloseTo(-overlap, 9);
    // 1 1/4 to 1 3/4 inches above the waist is usual. Common practice, no source.
    expect(markOn(sheet, 'break-point')?.y).toBeGreaterThanOrEqual(1.25 * 25.4);
    expect(markOn(sheet, 'break-point')?.y).toBeLessThanOrEqual(1.75 * 25.4);
  });
});
