import type { Path } from '../../src/geometry/cubic.ts';
import type { Point } from '../../src/geometry/point.ts';

/** An edge that once earned full marks, and that no teacher would take. */
export interface Unfair {
  readonly exercise: string;
  readonly target: string;
  /** How far it strays from the right one, mm. */
  readonly strays: number;
  readonly path: Path;
}

/** Where the edges were found: on the figure of this seed. */
export const UNFAIR_SEED = 'adv/1';

/**
 * The worst that a random search found among edges with full marks while they were read by their marks, their ends and their bow
 * alone: on the seed's figure, start, handle, handle, end, and so on, mm.
 */
export const unfair: readonly Unfair[] = [
  found(
    'collar-double',
    'outer-edge',
    115.0,
    '41.5,545.8 23.6,514.2 23.9,487.9 -10.2,439.0 -25.5,416.6 -158.6,184.6 -47.2,418.9',
  ),
  found(
    'collar-outline',
    'outer-edge',
    19.6,
    '28.5,536.7 11.9,495.5 7.4,495.5 -4.3,472.4 -15.5,450.3 -51.7,445.6 -40.6,405.4',
  ),
  found(
    'collar-single',
    'collar-neck-edge',
    33.0,
    '82.7,456.7 77.7,444.7 94.6,488.1 89.7,476.8 84.3,465.0 74.1,449.0 71.7,435.6 68.3,414.2 89.5,410.1 62.8,382.3 3.2,370.7 5.0,370.5 -31.2,363.3',
  ),
  found(
    'collar-single',
    'outer-edge',
    129.2,
    '28.1,535.9 16.9,508.6 -32.9,413.5 -50.0,381.9 -70.7,342.9 -107.2,162.9 -40.5,402.8',
  ),
  found('edge-ease', 'neck-seam', 60.6, '86.0,467.8 97.4,384.7 66.0,444.0 75.4,444.0 74.8,431.6 71.8,378.1 64.0,385.3'),
  found(
    'neck-edge',
    'collar-neck-edge',
    34.3,
    '64.3,500.2 60.2,489.7 92.8,481.3 88.6,471.1 83.9,460.2 76.5,452.5 73.6,438.9 69.0,418.6 62.0,424.2 63.0,383.5 38.8,380.3 54.0,387.1 -30.5,362.1',
  ),
  found(
    'shawl',
    'collar-neck-edge',
    37.9,
    '70.0,452.8 64.2,438.6 91.5,483.9 87.2,472.8 82.6,461.6 77.6,462.0 75.4,449.3 73.0,433.9 64.0,370.2 64.1,382.1',
  ),
  found(
    'shawl',
    'outer-edge',
    27.3,
    '27.7,536.0 16.6,506.8 28.7,520.1 18.5,496.1 1.3,454.2 -66.9,323.6 -75.2,260.3 -90.8,146.4 -65.3,75.6 -31.3,40.5',
  ),
];

function found(exercise: string, target: string, strays: number, places: string): Unfair {
  const points = places.split(' ').map((place): Point => {
    const [x = Number.NaN, y = Number.NaN] = place.split(',').map(Number);
    return { x, y };
  });
  const path = points.slice(1).flatMap((p3, index) => {
    const [p0, p1, p2] = [points[index - 2], points[index - 1], points[index]];
    return index % 3 === 2 && p0 && p1 && p2 ? [{ p0, p1, p2, p3 }] : [];
  });
  return { exercise, target, strays, path };
}
