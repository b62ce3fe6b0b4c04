import { type Storage, storageIn } from './storage.ts';

/** How an address says, behind its `#`, that a set is only looked at as a student would see it. */
export const TRIAL_PREFIX = 'try=';

/** Whether an address, by what stands behind its `#`, only looks at a set. */
export function isTrial(hash: string): boolean {
  return hash.startsWith(`#${TRIAL_PREFIX}`);
}

type Place = Parameters<typeof storageIn>[0];

/**
 * What a browser keeps for whoever learns in it: drafts, marks, sets, a name. Where a set is only looked at, everything is kept
 * apart, for that tab and as long as it is open: nothing of it is found among a student's own, and nothing of theirs is read.
 */
export function ownStorage(hash: () => string, own: Place, apart: Place): Storage {
  const [ownPlace, apartPlace] = [storageIn(own), storageIn(apart)];
  const here = (): Storage => (isTrial(hash()) ? apartPlace : ownPlace);
  return {
    read: (key) => here().read(key),
    write: (key, text) => here().write(key, text),
    remove: (key) => here().remove(key),
  };
}

/** The storage of this page. */
export const local = ownStorage(
  () => (typeof window === 'object' ? window.location.hash : ''),
  () => window.localStorage,
  () => window.sessionStorage,
);
