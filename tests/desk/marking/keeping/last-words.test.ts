import { describe, expect, test } from 'vitest';
import { withLastWords } from '../../../../src/desk/marking/keeping/last-words.ts';
import type { Shelf, Shelved } from '../../../../src/desk/marking/keeping/shelf.ts';
import { type Storage, storageIn } from '../../../../src/table/store/storage.ts';

const work = (stamp: string): Shelved => ({ stamp, text: `text of ${stamp}`, summary: null });

/** A storage as a browser has one, and what lies in it. */
function browser(): { readonly storage: Storage; readonly lying: Map<string, string> } {
  const lying = new Map<string, string>();
  const place = {
    getItem: (key: string) => lying.get(key) ?? null,
    setItem: (key: string, text: string) => {
      lying.set(key, text);
    },
    removeItem: (key: string) => {
      lying.delete(key);
    },
  };
  return { storage: storageIn(() => place), lying };
}

/** A shelf on which something lies; `closes` makes the page be closed before it is done. */
function shelfWith(first: Shelved | null, closes = false) {
  const shelf = {
    lying: first,
    look: () => Promise.resolve(shelf.lying),
    read: () => Promise.resolve(shelf.lying),
    put: (one: Shelved, over: string | null): ReturnType<Shelf['put']> => {
      if (closes) return new Promise(() => undefined);
      if (shelf.lying !== null && shelf.lying.stamp !== over) return Promise.resolve('elsewhere');
      shelf.lying = one;
      return Promise.resolve('kept');
    },
    remove: () => Promise.resolve('removed' as const),
  };
  return shelf;
}

/** A page that is closed over putting this work there. */
function closedOver(storage: Storage, one: Shelved, over: string | null): void {
  withLastWords(shelfWith(null, true), storage).leave(one, over).then();
}

describe('work that was being put away as the page was closed', () => {
  test('is put there by the next page', async () => {
    const { storage, lying } = browser();
    closedOver(storage, work('b'), 'a');
    const shelf = shelfWith(work('a'));
    await withLastWords(shelf, storage).finish();
    expect(shelf.lying).toEqual(work('b'));
    expect(lying.size).toBe(0);
  });

  test('goes over nothing that another page put there since', async () => {
    const { storage, lying } = browser();
    closedOver(storage, work('b'), 'a');
    const shelf = shelfWith(work('c'));
    await withLastWords(shelf, storage).finish();
    expect(shelf.lying).toEqual(work('c'));
    expect(lying.size).toBe(0);
  });

  test('leaves nothing behind where there was time, and is passed over where it is damaged', async () => {
    const { storage, lying } = browser();
    const shelf = shelfWith(work('a'));
    const safe = withLastWords(shelf, storage);
    expect(await safe.leave(work('b'), 'a')).toBe('kept');
    expect(lying.size).toBe(0);
    for (const text of [
      '{',
      '[]',
      '{"work":{"stamp":1,"text":"x"},"over":null}',
      '{"work":{"stamp":"c"},"over":"b"}',
    ]) {
      lying.set('gorgeline.desk.marking.last', text);
      await safe.finish();
    }
    expect(shelf.lying).toEqual(work('b'));
  });
});
