import { setImmediate } from 'node:timers/promises';
import type { Crew } from './crew.ts';
import type { Told } from './tell.ts';
import type { Work } from './work.ts';

/** Most pieces in a batch, and about how many characters: large enough that handing it over costs little beside marking it. */
const BATCH = 32;
const BATCH_TEXT = 1_000_000;

/** Batches under way for each hand: one it works on, and one that lies ready. */
const AHEAD = 2;

/**
 * Has work done by a crew and gives what is said of it in the order the work came. However long the stream is, no more is
 * held than the crew has under way.
 */
export async function* inOrder(work: AsyncIterable<Work>, crew: Crew): AsyncGenerator<Told> {
  const batches = batchesOf(work);
  const underWay: Promise<readonly Told[]>[] = [];
  let coming: Coming = batches.next();
  while (coming !== null || underWay.length > 0) {
    const full = underWay.length >= crew.hands * AHEAD;
    if (coming === null || full || (await first(coming, underWay[0])) === 'told') {
      yield* (await underWay.shift()) ?? [];
      continue;
    }
    const batch: IteratorResult<readonly Work[], void> = await coming;
    coming = batch.done ? null : batches.next();
    if (!batch.done) underWay.push(begun(crew.do(batch.value)));
  }
}

type Coming = Promise<IteratorResult<readonly Work[], void>> | null;

/** A batch under way is waited for in its turn; until then a failure is nobody's to hear. */
function begun(told: Promise<readonly Told[]>): Promise<readonly Told[]> {
  told.catch(() => undefined);
  return told;
}

/** Work in batches. One goes off when it is full, or when no more is there yet, so that a stream that trickles is answered as it trickles. */
async function* batchesOf(work: AsyncIterable<Work>): AsyncGenerator<readonly Work[], void> {
  const source = work[Symbol.asyncIterator]();
  let batch: Work[] = [];
  let coming = source.next();
  for (;;) {
    const { value, done } = await coming;
    if (!done) {
      batch.push(value);
      coming = source.next();
    }
    if (batch.length > 0 && (done || isFull(batch) || !(await isThere(coming)))) {
      yield batch;
      batch = [];
    }
    if (done) return;
  }
}

function isFull(batch: readonly Work[]): boolean {
  const text = batch.reduce((sum, piece) => sum + ('text' in piece ? piece.text.length : 0), 0);
  return batch.length >= BATCH || text >= BATCH_TEXT;
}

/** Which comes first: more work, or what is said of the first batch under way. */
async function first(coming: Promise<unknown>, told: Promise<unknown> | undefined): Promise<'work' | 'told'> {
  const work = coming.then(() => 'work' as const);
  return await (told === undefined ? work : Promise.race([work, told.then(() => 'told' as const)]));
}

/** Whether more work is there already, or as good as. */
async function isThere(coming: Promise<unknown>): Promise<boolean> {
  return await Promise.race([coming.then(() => true), setImmediate(false)]);
}
