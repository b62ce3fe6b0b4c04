import { spelled, spelledLines } from '../../words/unseen.ts';
import { handInLine } from '../notes/draft-key.ts';
import type { StudentNote } from '../notes/notes.ts';
import { setJson } from '../write-set.ts';
import {
  type FiledPiece,
  type FiledUnread,
  MARKING_FORMAT,
  MARKING_VERSION,
  type MarkingFile,
} from './marking-file.ts';
import { FOUND_LENGTH, WHY_LENGTH } from './marking-form.ts';

/**
 * The text of a marking file, fields in the order of docs/files.md, a piece of work a line; reading it gives the same
 * again. A file's name that no reader would take is spelled and cut.
 */
export function writeMarking({ set, work, students, unread, list, counts, saved }: MarkingFile): string {
  const fields: readonly (readonly [string, string])[] = [
    ['format', JSON.stringify(MARKING_FORMAT)],
    ['version', JSON.stringify(MARKING_VERSION)],
    ['saved', JSON.stringify(saved)],
    ['set', set === null ? 'null' : JSON.stringify(setJson(set))],
    ['work', listed(work.map(pieceText))],
    ['students', listed(students.map(studentText))],
    ['unread', listed(unread.map(unreadText))],
    ...(list === '' ? [] : [['list', JSON.stringify(list)] as const]),
    ...(counts === 'last' ? [] : [['counts', JSON.stringify(counts)] as const]),
  ];
  return `{\n${fields.map(([name, text]) => `  "${name}": ${text}`).join(',\n')}\n}\n`;
}

function pieceText({ found, handIn, marks, comment }: FiledPiece): string {
  const own = Object.entries(marks).map(([target, { marks: given, of, reason }]) => [
    target,
    { marks: given, of, reason },
  ]);
  const after = JSON.stringify({ marks: Object.fromEntries(own), comment }).slice(1);
  // A hand-in's line is remembered: of a whole class only what changed is written out again.
  return `{"found":${JSON.stringify(written(found))},"handIn":${handInLine(handIn)},${after}`;
}

function studentText({ student, number, comment, until }: StudentNote): string {
  return JSON.stringify({ student, number, comment, ...(until === null ? {} : { until }) });
}

function unreadText({ found, begun, why }: FiledUnread): string {
  if (begun === '' && why === '') return JSON.stringify(written(found));
  const told = spelledLines(why).slice(0, WHY_LENGTH).toWellFormed();
  return JSON.stringify({
    found: written(found),
    ...(begun === '' ? {} : { begun }),
    ...(why === '' ? {} : { why: told }),
  });
}

function listed(texts: readonly string[]): string {
  return texts.length === 0 ? '[]' : `[\n    ${texts.join(',\n    ')}\n  ]`;
}

function written(found: string): string {
  return spelled(found).slice(0, FOUND_LENGTH);
}
