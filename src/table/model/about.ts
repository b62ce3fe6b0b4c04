import type { HandIn, HintTier } from '../../exchange/hand-in.ts';
import type { Exercise } from '../../grader/exercise.ts';
import { type Setting, settingOf } from './setting.ts';

/** What belongs to a draft beside its steps: whose it is, on which order, and what help it had. */
export interface About {
  readonly setting: Setting;
  /** As written into what is saved; may be empty. */
  readonly student: string;
  /** The number a school may have given; may be empty. */
  readonly number: string;
  /** Targets whose right place was asked for. */
  readonly shown: HandIn['shown'];
  readonly hints: Readonly<Record<string, HintTier>>;
  /** How often it was checked. */
  readonly checks: number;
  /** When its first step was drawn, ISO 8601; null before that. */
  readonly begun: string | null;
}

/** What a kept or opened draft says about itself. */
export function aboutOf(handIn: HandIn, exercise: Exercise): About {
  const { order, strictness, student, number, shown, hints, checks, begun } = handIn;
  return { setting: settingOf(order, strictness, exercise), student, number, shown, hints, checks, begun };
}

/** A draft that says no name is that of whoever is at the table. */
export function withName(about: About, name: string): About {
  return about.student === '' ? { ...about, student: name } : about;
}

/** As much of `now` as `part` says something of: what to go back to when `part` is taken back. */
export function sameOf(part: Partial<About>, now: About): Partial<About> {
  return Object.fromEntries(Object.keys(part).map((field) => [field, now[field as keyof About]]));
}
