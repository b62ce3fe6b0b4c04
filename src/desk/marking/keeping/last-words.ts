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
      const { work, over } = lastIn(storage.read(KEY)) ?? { work: null, over: [] };
      for (const stamp of over) if (work !== null && (await shelf.put(work, stamp)) !== 'elsewhere') break;
      storage.remove(KEY);
    },
  };
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
