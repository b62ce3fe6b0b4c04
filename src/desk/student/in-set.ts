import { isTrial, TRIAL_PREFIX } from '../../table/store/own-storage.ts';

/** How an address says, behind its `#`, which of the sets in this browser is meant. */
const IN_SET = new RegExp(`^#(?:in=|${TRIAL_PREFIX})([0-9a-f]{8})$`);

/** What stands behind the `#` of a page that belongs to a set, as this page's own says whether it is worked or only looked at. */
export function inSetHash(id: string, here: string): string {
  return `#${isTrial(here) ? TRIAL_PREFIX : 'in='}${id}`;
}

/** The set that is meant; null where none is. */
export function setIn(hash: string): string | null {
  return IN_SET.exec(hash)?.[1] ?? null;
}

/** The way back to a set: a set that is only looked at has to be said, one that is worked on is the last that was opened. */
export function wayBackTo(set: string, id: string, here: string): string {
  return isTrial(here) ? `${set}${inSetHash(id, here)}` : set;
}
