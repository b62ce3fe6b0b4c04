import './measure/paper-by-name.ts';
import type { Cubic } from '../../src/geometry/cubic.ts';
import { patternCurves } from './measure/pattern-curves.ts';

/** Length and crossings of curves as patterns have them, against bezier-js and paper, with how right each of them is. */
const { lengths } = await import('./measure/lengths.ts');
const { crossingPairs, crossings } = await import('./measure/crossings.ts');

const curves = patternCurves(300, 'lengths');
console.log(`Lengths of ${curves.length} curves, against chords extrapolated`);
console.table(lengths(curves));

const others = patternCurves(300, 'others');
const found = crossingPairs(curves.map((one, at) => [one, others[at] as Cubic]));
console.log(`Crossings of ${found.length} pairs of curves, against straight runs and distances found by halving`);
console.table(crossings(found));
