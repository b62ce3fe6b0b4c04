import { replay } from '../../src/drafting/replay.ts';
import type { Givens } from '../../src/drafting/sheet.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { inTurn, short } from './measure/rounds.ts';
import { collarLine, wholeCollar } from './measure/whole-collar.ts';

/** Replaying a whole collar: on a table that nobody has drawn on, and again on the same table, against parsing its bytes. */
const ROUNDS = 400;

const line = collarLine('bench', wholeCollar.reference);

function tableOf(seed: number): Givens {
  const laid = layOut(wholeCollar, orderFor(wholeCollar, seed));
  if (!laid.ok) throw new Error('The order of the bench cannot be laid.');
  return laid.givens;
}

const tables = Array.from({ length: Math.ceil(ROUNDS * 1.25) + 1 }, (_, seed) => tableOf(seed));
const took = inTurn(
  {
    parse: () => JSON.parse(line),
    fresh: (round) => replay(tables[round] as Givens, wholeCollar.reference),
    again: (round) => replay(tables[round] as Givens, wholeCollar.reference),
  },
  ROUNDS,
);
const parse = took['parse'] ?? Number.NaN;
console.table(
  Object.entries(took).map(([what, ms]) => ({
    what: { parse: 'JSON.parse', fresh: 'replay', again: 'replay on a table where it lies already' }[what],
    steps: wholeCollar.reference.length,
    ms: short(ms),
    'times JSON.parse': short(ms / parse),
  })),
);
