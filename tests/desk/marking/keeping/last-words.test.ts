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

/** A shelf on which something lies. */
function shelfWith(first: Shelved | null) {
  const shelf = {
    lying: first,
    look: () => Promise.resolve(shelf.lying),
    read: () => Promise.resolve(shelf.lying),
    put: (one: Shelved, over: string | null): ReturnType<Shelf['put']> => {
      if (shelf.lying !== null && shelf.lying.stamp !== over) return Promise.resolve('elsewhere');
      shelf.lying = one;
      return Promise.resolve('kept');
    },
    remove: () => Promise.resolve('removed' as const),
  };
  return shelf;
}

/** What lies on a shelf once a page wakes after one that noted this and was closed; and what the browser still has of the note. */
async function afterwards(lay: Shelved | null, over: readonly (string | null)[]) {
  const { storage, lying } = browser();
  withLastWords(shelfWith(lay), storage).note(work('b'), over);
  const shelf = shelfWith(lay);
  await withLastWords(shelf, storage).finish();
  return [shelf.lying?.stamp, lying.size];
}

describe('work that was being put away as the page was closed', () => {
  test('is put there by the next page, over what lay there or what was being put there', async () => {
    expect(await afterwards(work('a'), ['a'])).toEqual(['b', 0]);
    expect(await afterwards(null, [null])).toEqual(['b', 0]);
    expect(await afterwards(work('a'), ['before', 'a'])).toEqual(['b', 0]);
  });

  test('goes over nothing that another page put there since', async () => {
    expect(await afterwards(work('c'), ['a'])).toEqual(['c', 0]);
    expect(await afterwards(work('c'), [null])).toEqual(['c', 0]);
  });

  test.each(['full', 'forbidden'] as const)('stays noted where the shelf is %s, until there is room', async (why) => {
    const { storage } = browser();
    const shelf = shelfWith(work('a'));
    const words = withLastWords({ ...shelf, put: () => Promise.resolve(why) }, storage);
    words.note(work('b'), ['a']);
    await words.finish();
    await withLastWords(shelf, storage).finish();
    expect(shelf.lying?.stamp).toBe('b');
  });

  test('is forgotten where there was time, and passed over where it is damaged', async () => {
    const { storage, lying } = browser();
    const shelf = shelfWith(work('a'));
    const safe = withLastWords(shelf, storage);
    safe.note(work('b'), ['a']);
    safe.forget();
    expect(lying.size).toBe(0);
    for (const text of [
      '{',
      '[]',
      '{"work":{"stamp":1,"text":"x"},"over":["a"]}',
      '{"work":{"stamp":"c","text":""},"over":"a"}',
    ]) {
      lying.set('gorgeline.desk.marking.last', text);
      await safe.finish();
    }
    expect(shelf.lying).toEqual(work('a'));
  });
});
