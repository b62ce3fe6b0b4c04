import * as v from 'valibot';
import { isRecord } from '../../drafting/record.ts';
import { fields, named, word } from '../../grader/reading/fields.ts';
import { LIST_LENGTH } from '../class/class-list.ts';
import { COUNTS } from '../class/counting.ts';
import { line, lines, moment } from '../fields.ts';
import { FILE_LENGTH } from '../json.ts';
import { COMMENT_LENGTH, REASON_LENGTH } from '../notes/notes.ts';
import { NAME_LENGTH, NUMBER_LENGTH } from '../student.ts';
import { MARKING_FORMAT, MARKING_VERSION, MARKING_WORK } from './marking-file.ts';

/** The form of a marking file. The set and the hand-ins in it have readers of their own. */

/** Longest name of a file with the folders it lay in. */
export const FOUND_LENGTH = 1000;

/** Longest reason why a file could not be read. */
export const WHY_LENGTH = 2000;

/** No check is worth more. */
const MOST = 1_000_000;

const found = line('wants.found', FOUND_LENGTH);

const ownMark = fields(
  {
    marks: amount('wants.own-marks'),
    of: amount('wants.own-of'),
    reason: v.pipe(lines('wants.own-reason', REASON_LENGTH), v.regex(/\S/, 'wants.own-reason')),
  },
  'wants.own-mark',
);

const comment = lines('wants.comment', COMMENT_LENGTH);

const piece = fields(
  {
    found,
    handIn: v.custom<Readonly<Record<string, unknown>>>(isRecord, 'wants.filed-hand-in'),
    marks: named(ownMark, 'wants.own-mark-list'),
    comment,
  },
  'wants.filed-piece',
);

const student = fields(
  {
    ...{ student: line('wants.student', NAME_LENGTH), number: line('wants.number', NUMBER_LENGTH), comment },
    until: v.optional(moment('wants.until')),
  },
  'wants.student-comment',
);

/** Only its place, where nothing more is known of it. */
const unread = v.union(
  [
    found,
    fields(
      {
        found,
        begun: v.optional(v.pipe(v.string('wants.begun'), v.maxLength(FILE_LENGTH, 'wants.begun'))),
        why: v.optional(lines('wants.why-unread', WHY_LENGTH)),
      },
      'wants.filed-unread',
    ),
  ],
  'wants.filed-unread',
);

export const markingForm = fields(
  {
    format: v.literal(MARKING_FORMAT),
    version: v.literal(MARKING_VERSION),
    saved: moment('wants.saved'),
    set: v.nullable(v.custom<Readonly<Record<string, unknown>>>(isRecord, 'wants.filed-set')),
    work: many(piece, 'wants.filed-work'),
    students: many(student, 'wants.student-comments'),
    unread: many(unread, 'wants.unread'),
    list: v.optional(lines('wants.class-list', LIST_LENGTH)),
    counts: v.optional(word(COUNTS, 'wants.counts')),
  },
  'wants.marking',
);

function amount(wanted: 'wants.own-marks' | 'wants.own-of') {
  return v.pipe(v.number(wanted), v.minValue(0, wanted), v.maxValue(MOST, wanted));
}

function many<S extends v.GenericSchema>(
  entry: S,
  wanted: 'wants.filed-work' | 'wants.student-comments' | 'wants.unread',
) {
  return v.pipe(v.array(entry, wanted), v.maxLength(MARKING_WORK, 'wants.shorter'));
}
