import { type ClassWork, classWorkOf } from '../exchange/class/class-work.ts';
import type { Marking } from '../exchange/mark-work.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import { gradePiece, type Marked } from './grade-piece.ts';
import { workLines } from './grade-table.ts';
import type { Work } from './work.ts';

/** How marked work is told. */
export interface Manner {
  readonly by: Omit<Marking, 'load'>;
  /** A table for people, a JSON line for programs, or nothing but the report on the class. */
  readonly form: 'table' | 'json' | 'summary';
}

/** What is said of one piece of work: whole lines for standard output and standard error. */
export interface Told {
  readonly out: string;
  readonly err: string;
  readonly outcome: 'marked' | 'refused' | 'noted';
  /** What the report on the class keeps of it: nothing where there is none to be made. */
  readonly kept: readonly ClassWork[];
}

const reader = { language: 'en', unit: 'in' } as const;

/** Marks one piece of work and puts it into words. */
export function tell(piece: Work, { by, form }: Manner): Told {
  const result = resultOf(piece, by);
  if (!result.ok) {
    const outcome = 'note' in piece ? 'noted' : 'refused';
    return { out: '', err: `${spelled(piece.where)}: ${spelled(result.reason)}\n`, outcome, kept: [] };
  }
  if (form === 'summary') return { out: '', err: '', outcome: 'marked', kept: [classWorkOf(result.row)] };
  // In JSON, too, what is spelled stays what it was.
  const out = form === 'table' ? workLines(result.row, result.notMade) : `${spelled(JSON.stringify(result.row))}\n`;
  return { out, err: '', outcome: 'marked', kept: [] };
}

function resultOf(piece: Work, by: Manner['by']): Marked {
  if ('text' in piece) return gradePiece(piece, by);
  return { ok: false, reason: say('note' in piece ? piece.note : piece.refused, reader) };
}
