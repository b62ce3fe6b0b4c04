import { createStore, promisifyRequest, type UseStore } from 'idb-keyval';
import { isFull, storageIn } from '../../../table/store/storage.ts';
import { withLastWords } from './last-words.ts';
import type { Label, Shelf, Shelved } from './shelf.ts';
import { summaryFrom } from './summary.ts';

const [STAMP, SUMMARY, TEXT] = ['stamp', 'summary', 'text'];

/**
 * The shelf in this browser's IndexedDB: local storage ends at some five million characters, a class does not. That nobody
 * else has put something there meanwhile is seen in the same transaction in which it is written.
 */
export function browserShelf(): Shelf {
  let store: UseStore | null = null;
  // Asked for at first use: a browser may forbid even to look at it.
  const places = (): UseStore => {
    store ??= createStore('gorgeline.desk.marking', 'work');
    return store;
  };
  const shelf: Parameters<typeof withLastWords>[0] = {
    look: () => unlessForbidden(() => places()('readonly', labelIn)),
    read: () =>
      unlessForbidden(() =>
        places()('readonly', async (place) => {
          const label = await labelIn(place);
          const text: unknown = label && (await promisifyRequest(place.get(TEXT)));
          return label && { ...label, text: typeof text === 'string' ? text : '' };
        }),
      ),
    put: async (work, over) => {
      try {
        return await places()('readwrite', (place) => putOver(place, work, over));
      } catch (error) {
        return isFull(error) ? 'full' : 'forbidden';
      }
    },
    remove: (over) => unlessForbidden(() => places()('readwrite', (place) => removeFrom(place, over))),
  };
  return withLastWords(
    shelf,
    storageIn(() => window.localStorage),
  );
}

async function putOver(
  place: IDBObjectStore,
  { stamp, summary, text }: Shelved,
  over: string | null,
): Promise<'kept' | 'elsewhere'> {
  const there = await stampIn(place);
  if (there !== null && there !== over) return 'elsewhere';
  place.put(stamp, STAMP);
  place.put(summary, SUMMARY);
  place.put(text, TEXT);
  await promisifyRequest(place.transaction);
  return 'kept';
}

async function removeFrom(place: IDBObjectStore, over: string): Promise<'removed' | 'elsewhere'> {
  const there = await stampIn(place);
  if (there !== null && there !== over) return 'elsewhere';
  place.clear();
  await promisifyRequest(place.transaction);
  return 'removed';
}

async function stampIn(place: IDBObjectStore): Promise<string | null> {
  const stamp: unknown = await promisifyRequest(place.get(STAMP));
  return typeof stamp === 'string' ? stamp : null;
}

async function labelIn(place: IDBObjectStore): Promise<Label | null> {
  const stamp = await stampIn(place);
  if (stamp === null) return null;
  return { stamp, summary: summaryFrom(await promisifyRequest(place.get(SUMMARY))) };
}

async function unlessForbidden<T>(what: () => Promise<T>): Promise<T | 'forbidden'> {
  try {
    return await what();
  } catch {
    return 'forbidden';
  }
}
