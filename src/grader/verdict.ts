import { shareOf } from './bounds.ts';
import type { Status, Verdict } from './result.ts';

/** A check as it was marked. */
interface MarkedCheck {
  readonly status: Status;
  /** What it could have earned. */
  readonly of: number;
}

/** Who earns so much of a target's marks is nearly right, and who earns so much, partly; ours. */
const NEARLY = 3 / 4;
const PARTLY = 1 / 4;

/**
 * The verdict on a target, by the share of its marks that it earns. Whatever is off by no more than twice what is allowed is
 * nearly right too, though it earns half; what is not there earns no other word.
 */
export function verdictOn(checks: readonly MarkedCheck[]): Verdict {
  if (checks.some(({ status }) => status === 'missing')) return 'missing';
  if (checks.every(({ status }) => status === 'within')) return 'right';
  const of = checks.reduce((sum, check) => sum + check.of, 0);
  const earned = checks.reduce((sum, check) => sum + check.of * shareOf(check.status), 0);
  if (earned >= NEARLY * of || checks.every(({ status }) => status !== 'beyond')) return 'nearly';
  return earned >= PARTLY * of ? 'partly' : 'not-yet';
}

/** The same where it is told only whether an answer is right: of one that is not, nothing of how near it comes. */
export function verdictAlone(verdict: Verdict): Verdict {
  return verdict === 'right' || verdict === 'missing' ? verdict : 'not-yet';
}
