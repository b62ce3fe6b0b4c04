import { type Literal, parse, print, type Tree } from '../drafting/expression.ts';
import type { Step } from '../drafting/step.ts';
import { stepFields } from './step-fields.ts';

/** A step changed in one place, as it may have been meant. */
export interface Amendment {
  readonly step: Step;
  readonly kind: 'unit' | 'added' | 'way';
  /** What stands there, and what stands there now; of something added, what was taken away. */
  readonly wrote: string;
  readonly meant: string;
}

/** Every way of changing what was typed of one length in a step: another unit, or nothing added to it. */
export function ofAmounts(step: Step): readonly Amendment[] {
  return stepFields(step).flatMap((field) => ofAmount(step, field));
}

function ofAmount(
  step: Step,
  { field, text }: { readonly field: string; readonly text: string },
): readonly Amendment[] {
  const parsed = parse(text);
  if (!parsed.ok) return [];
  const amended = (tree: Tree): Step => ({ ...step, [field]: print(tree) }) as Step;
  const units = inOtherUnits(parsed.tree, alone).map(({ tree, from, to }) => ({
    step: amended(tree),
    kind: 'unit' as const,
    wrote: from,
    meant: to,
  }));
  const added = addedTo(parsed.tree);
  // What was added is left out first: a little of it in another unit may be near enough to nothing.
  return added === null
    ? units
    : [{ step: amended(added.bare), kind: 'added', wrote: text, meant: added.extra.text }, ...units];
}

type Others = Readonly<Record<string, readonly string[]>>;

/** Units that are taken for each other. */
const taken: Others = { cm: ['in'], in: ['cm'] };

/** Where a length stands alone, its point may have been left out or put in besides. In a sum it would only come to little. */
const alone: Others = { cm: ['in', 'mm'], in: ['cm'], mm: ['cm'] };

interface Reread {
  readonly tree: Tree;
  readonly from: string;
  readonly to: string;
}

/** The tree with each of its lengths, one at a time, in each unit that may have been meant. */
function inOtherUnits(tree: Tree, others: Others): readonly Reread[] {
  if (tree.kind === 'name') return [];
  if (tree.kind === 'minus')
    return inOtherUnits(tree.of, others).map((one) => ({ ...one, tree: { ...tree, of: one.tree } }));
  if (tree.kind === 'pair')
    return [
      ...inOtherUnits(tree.left, taken).map((one) => ({ ...one, tree: { ...tree, left: one.tree } })),
      ...inOtherUnits(tree.right, taken).map((one) => ({ ...one, tree: { ...tree, right: one.tree } })),
    ];
  const unit = / (cm|in|mm)$/.exec(tree.text)?.[1] ?? '';
  return (others[unit] ?? []).flatMap((other) => {
    const to = `${tree.text.slice(0, -unit.length)}${other}`;
    const parsed = parse(to);
    return parsed.ok ? [{ tree: parsed.tree, from: tree.text, to }] : [];
  });
}

/** Seam allowances are between these, mm, wherever they are wide; common practice, no source. What is less or more is no allowance. */
const LEAST = 5;
const MOST = 26;

/** A length typed behind a plus that may be a seam allowance, and what it was added to. */
function addedTo(tree: Tree): { readonly bare: Tree; readonly extra: Literal } | null {
  if (tree.kind !== 'pair' || tree.sign !== '+') return null;
  const { left, right } = tree;
  if (right.kind !== 'literal' || right.quantity.dimension !== 'length') return null;
  const { value } = right.quantity;
  return value >= LEAST && value <= MOST ? { bare: left, extra: right } : null;
}

const opposite: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  up: 'down',
  down: 'up',
  clockwise: 'anticlockwise',
  anticlockwise: 'clockwise',
};

/** The step with each way that it goes, one at a time, turned to the opposite. */
export function ofWays(step: Step): readonly Amendment[] {
  const written = step as unknown as Readonly<Record<string, unknown>>;
  return ['side', 'toward', 'turn'].flatMap((field): readonly Amendment[] => {
    const wrote = written[field];
    const meant = typeof wrote === 'string' ? opposite[wrote] : undefined;
    if (typeof wrote !== 'string' || meant === undefined) return [];
    return [{ step: { ...step, [field]: meant } as Step, kind: 'way', wrote, meant }];
  });
}
