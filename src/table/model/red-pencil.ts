import { between, distance, type Point } from '../../geometry/point.ts';
import type { CheckResult, RedMark } from '../../grader/result.ts';
import { message } from '../../words/message.ts';
import type { Label } from '../drawing/drawing.ts';

/** An arrow that only says which way is this long, mm, so that it does not give the right place away. */
const POINTER = 22;

/** What the red pencil draws on the sheet: marks, and the offsets written beside them. */
export interface RedPencil {
  readonly marks: readonly RedMark[];
  readonly notes: readonly Label[];
}

export const noPencil: RedPencil = { marks: [], notes: [] };

/**
 * The marker's hand on the sheet. A band shows what is allowed where the answer lies in it or near it; where it is further
 * off, an arrow says which way, and its words how far, until the learner asks to be shown.
 */
export function redPencil(checks: readonly CheckResult[], shown: ReadonlySet<string>): RedPencil {
  const right = narrowest(checks.filter(({ status, red }) => status === 'within' && red.band));
  const wrong = checks.filter(({ red, status }) => status !== 'within' && (red.arrow || red.band));
  const judged = new Set(wrong.map(({ target }) => target));
  const kept = right.filter(({ target }) => !judged.has(target));
  const drawn = onceEach(
    [...kept, ...wrong].map((check) => ({ check, mark: markFor(check, shown.has(check.target)) })),
  );
  return {
    marks: drawn.map(({ mark }) => mark),
    notes: drawn.flatMap(({ check, mark }) => noteFor(check, mark)),
  };
}

/** Of the bands about one right answer the narrowest, which it has to lie in. */
function narrowest(checks: readonly CheckResult[]): readonly CheckResult[] {
  const widestFirst = checks.toSorted((a, b) => b.tolerance - a.tolerance);
  return [...new Map(widestFirst.map((check) => [check.target, check])).values()];
}

interface Drawn {
  readonly check: CheckResult;
  readonly mark: RedMark;
}

/** Two checks may find the same slip; it is drawn once. */
function onceEach(drawn: readonly Drawn[]): Drawn[] {
  return [...new Map(drawn.map((one) => [JSON.stringify([one.mark, one.check.off]), one])).values()];
}

function markFor({ red, status }: CheckResult, shown: boolean): RedMark {
  if (shown) return red;
  return { band: status === 'beyond' ? null : red.band, arrow: red.arrow && shortened(red.arrow) };
}

function shortened({ from, to }: { readonly from: Point; readonly to: Point }): {
  readonly from: Point;
  readonly to: Point;
} {
  const long = distance(from, to);
  return long <= POINTER ? { from, to } : { from, to: between(from, to, POINTER / long) };
}

function noteFor({ off, unit }: CheckResult, { arrow }: RedMark): Label[] {
  if (!arrow || off === null) return [];
  const words =
    unit === 'mm'
      ? message('table.off-by', { off: { mm: off } })
      : message('table.off-degrees', { off: Math.round(off * 10) / 10 });
  return [{ by: [arrow.from, arrow.to], words, tone: 'red' }];
}
