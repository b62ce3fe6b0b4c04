import { isRecord } from '../../../drafting/record.ts';
import type { Storage } from '../../../table/store/storage.ts';
import type { Shelf, Shelved } from './shelf.ts';
import { summaryFrom } from './summary.ts';

const KEY = 'gorgeline.desk.marking.last';

/**
 * A shelf that takes its time, made safe against a page that is closed meanwhile: what is put there then is written at once into
 * a storage that does not wait, and put on the shelf as the next page wakes, unless it came there or something else did.
 */
export function withLastWords(shelf: Pick<Shelf, 'look' | 'read' | 'put' | 'remove'>, storage: Storage): Shelf {
  return {
    ...shelf,
    note: (work, over) => {
      storage.write(KEY, JSON.stringify({ work, over }));
    },
    forget: () => storage.remove(KEY),
    finish: async () => {
      const last = lastIn(storage.read(KEY));
      const kept = last === null ? 'elsewhere' : await putOverOne(shelf, last);
      // Where there was no room for it, this is the only place it has.
      if (kept !== 'full' && kept !== 'forbidden') storage.remove(KEY);
    },
  };
}

/** Puts work over what has one of the stamps it names: `elsewhere` where something else lies there. */
async function putOverOne(shelf: Pick<Shelf, 'put'>, { work, over }: LastWords): ReturnType<Shelf['put']> {
  for (const stamp of over) {
    const kept = await shelf.put(work, stamp);
    if (kept !== 'elsewhere') return kept;
  }
  return 'elsewhere';
}

interface LastWords {
  readonly work: Shelved;
  readonly over: readonly (string | null)[];
}

/** Null where there are none that can be read. */
function lastIn(text: string | null): LastWords | null {
  const json = text === null ? null : parsed(text);
  if (!isRecord(json) || !isRecord(json['work'])) return null;
  const { over } = json;
  const { stamp, text: written, summary } = json['work'];
  if (typeof stamp !== 'string' || typeof written !== 'string') return null;
  if (!Array.isArray(over) || !over.every((one) => one === null || typeof one === 'string')) return null;
  return { work: { stamp, text: written, summary: summaryFrom(summary) }, over };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
