import { createHash } from 'node:crypto';
import { UNIT_KEY } from '../course/unit-switch.ts';

/**
 * Runs before the first paint, so that nothing moves afterwards: says that there is scripting, and takes up the
 * reader's unit. Written into the page, because a file would come too late.
 */
export const EARLY = [
  'const root = document.documentElement;',
  "root.classList.add('awake');",
  `try { if (localStorage.getItem('${UNIT_KEY}') === 'in') root.dataset.unit = 'in'; } catch {}`,
].join('');

/** The hash by which the page's policy knows the script. */
export const EARLY_HASH = `sha256-${createHash('sha256').update(EARLY).digest('base64')}` as const;
