import type { Name } from '../../drafting/step.ts';
import { readSet } from '../../exchange/read-set.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import { setJson, setMark } from '../../exchange/write-set.ts';
import type { Kept, Storage } from '../../table/store/storage.ts';

/** Where a set that was opened in this browser is kept, and where it is kept which one was opened last. */
const keyOf = (id: string): string => `gorgeline.set.${id}`;
const LAST = 'gorgeline.set';

/** Keeps a set that was opened, so that its exercises find it. */
export function keepSet(local: Storage, set: ProblemSet): Kept {
  const { id } = setMark(set);
  local.write(LAST, id);
  return local.write(keyOf(id), JSON.stringify(setJson(set)));
}

/** The set of this id, or the one opened last; null where none is kept that can be read. */
export function keptSet(local: Storage, exercises: readonly Name[], id = local.read(LAST)): ProblemSet | null {
  const text = id === null ? null : local.read(keyOf(id));
  if (text === null) return null;
  const read = readSet(text, exercises);
  return read.ok ? read.set : null;
}
