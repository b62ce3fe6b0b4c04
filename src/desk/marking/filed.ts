import {
  type FiledPiece,
  MARKING_LENGTH,
  MARKING_WORK,
  type MarkingFile,
} from '../../exchange/marking-file/marking-file.ts';
import { writeMarking } from '../../exchange/marking-file/write-marking.ts';
import { draftKey } from '../../exchange/notes/draft-key.ts';
import { UNTOUCHED } from '../../exchange/notes/notes.ts';
import { say } from '../../words/say.ts';
import type { Held } from './intake/piles.ts';
import { isUntold, type Refused, wasStopped } from './intake/refused.ts';
import type { Laid } from './intake/taken.ts';

/** All that lies on the desk as a marking file; `saved` is when, ISO 8601. */
export function filed({ set, taken, waiting, notes }: Held, saved: string | null): MarkingFile {
  const lying = taken.flatMap((one): readonly Laid[] => {
    if (one.ok) return [{ found: one.row.file, handIn: one.handIn }];
    return one.handIn === null ? [] : [{ found: one.where, handIn: one.handIn }];
  });
  const work = [...lying, ...waiting].map(({ found, handIn }): FiledPiece => {
    const { marks, comment } = notes.pieces.get(draftKey(handIn)) ?? UNTOUCHED;
    return { found, handIn, marks, comment };
  });
  const unread = taken.flatMap((one) =>
    one.ok || one.handIn !== null ? [] : [{ found: one.where, begun: one.begun, why: whyUnread(one) }],
  );
  return { set, work, students: [...notes.students.values()], unread, list: notes.list, counts: notes.counts, saved };
}

/** In English, whoever marks: a file is opened anywhere. */
const reader = { language: 'en', unit: 'cm' } as const;

function whyUnread(one: Refused): string {
  return wasStopped(one) || isUntold(one) ? '' : say(one.message, reader);
}

/** The text of the marking file; null where it is more than one such file holds. */
export function filedText(held: Held, saved: string | null): string | null {
  const file = filed(held, saved);
  if (file.work.length > MARKING_WORK || file.unread.length > MARKING_WORK) return null;
  const text = writeMarking(file);
  return text.length > MARKING_LENGTH ? null : text;
}
