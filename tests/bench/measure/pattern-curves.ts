import { type Chance, chanceOf } from '../../../src/garment/seed.ts';
import type { Cubic } from '../../../src/geometry/cubic.ts';
import { add, heading, point, scale } from '../../../src/geometry/point.ts';

/** How fine chance is: a fraction of a range in so many steps. */
const FINE = 1e6;

/**
 * Curves as a pattern has them, always the same for the same seed: chords of 150 to 500 mm that begin within 150 mm of one
 * place, leaving and arriving within 75 degrees of the chord, with handles of a quarter to a half of it.
 */
export function patternCurves(count: number, seed: string): readonly Cubic[] {
  const chance = chanceOf(`curves/${seed}`);
  return Array.from({ length: count }, () => patternCurve(chance));
}

function patternCurve(chance: Chance): Cubic {
  const between = (least: number, most: number): number => least + ((most - least) * chance.whole(0, FINE)) / FINE;
  const p0 = point(between(-150, 150), between(-150, 150));
  const [chord, way] = [between(150, 500), between(-Math.PI, Math.PI)];
  const p3 = add(p0, scale(heading(way), chord));
  const handle = (): number => chord * between(0.25, 0.5);
  return {
    p0,
    p1: add(p0, scale(heading(way + between(-1.3, 1.3)), handle())),
    p2: add(p3, scale(heading(way + between(-1.3, 1.3)), -handle())),
    p3,
  };
}
