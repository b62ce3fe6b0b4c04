import { freeHandOf } from '../exchange/class/alike/free-hand.ts';
import { type ClassWork, classWorkOf } from '../exchange/class/class-work.ts';
import { type Entry, entryOf } from '../exchange/class/gradebook.ts';
import type { Marking } from '../exchange/mark-work.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import { gradePiece, type Marked } from './grade-piece.ts';
import { workLines } from './grade-table.ts';
import type { Work } from './work.ts';

/** A table for people, a JSON line for programs, or nothing but what is made of all of it: the report on the class, the gradebook. */
export type Form = 'table' | 'json' | 'summary' | 'csv';

/** How marked work is told. */
export interface Manner {
  readonly by: Omit<Marking, 'load'>;
  readonly form: Form;
}

/** What is said of one piece of work: whole lines for standard output and standard error. */
export interface Told {
  readonly out: string;
  readonly err: string;
  readonly outcome: 'marked' | 'refused' | 'noted';
  /** What the report on the class keeps of it, and the gradebook: nothing where there is none to be made. */
  readonly kept: readonly ClassWork[];
  readonly entries: readonly Entry[];
}

const nothing = { kept: [], entries: [] } as const;

const reader = { language: 'en', unit: 'in' } as const;

/** Marks one piece of work and puts it into words. */
export function tell(piece: Work, { by, form }: Manner): Told {
  const result = resultOf(piece, by);
  if (!result.ok) {
    const outcome = 'note' in piece ? 'noted' : 'refused';
    return { out: '', err: `${spelled(piece.where)}: ${spelled(result.reason)}\n`, outcome, ...nothing };
  }
  const silent = { out: '', err: '', outcome: 'marked' } as const;
  if (form === 'summary') return { ...silent, ...nothing, kept: [classWorkOf(result.row, freeHandOf(result.work))] };
  if (form === 'csv') return { ...silent, ...nothing, entries: [entryOf(result.row)] };
  // In JSON, too, what is spelled stays what it was.
  const out = form === 'table' ? workLines(result.row, result.notMade) : `${spelled(JSON.stringify(result.row))}\n`;
  return { out, err: '', outcome: 'marked', ...nothing };
}

function resultOf(piece: Work, by: Manner['by']): Marked {
  if ('text' in piece) return gradePiece(piece, by);
  return { ok: false, reason: say('note' in piece ? piece.note : piece.refused, reader) };
}
