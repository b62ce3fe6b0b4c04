import { parentPort } from 'node:worker_threads';
import type { Told } from '../../src/cli/tell.ts';
import type { Work } from '../../src/cli/work.ts';

// A hand that dies of some work: it fills its memory, or throws, and says the rest back.
parentPort?.on('message', (batch: readonly Work[]) => {
  parentPort?.postMessage(batch.map(said));
});

function said(piece: Work): Told {
  const text = 'text' in piece ? piece.text : '';
  if (text === 'throw') throw new Error('thrown in the hand');
  const held: number[][] = [];
  while (text === 'fill') held.push(new Array<number>(2_000_000).fill(0.5));
  return { out: `${text}\n`, err: '', outcome: 'marked', strange: null, kept: [], entries: [], unread: [], wholes: [] };
}
