import { entry, plain } from '../entry.ts';

/** What the desk says of a class: the misreadings it made, where its answers lie, and drafts that are alike. */
export const classWords = {
  'class.earlier': entry(['student', 'title', 'when'], '{student}: {title}, saved {when}'),
  'class.versions': plain('All that was handed in of this'),
  'class.version': entry(['when'], '{when}'),
  'class.version-counts': entry(['when'], '{when} (this one counts)'),
  'class.alike': plain('Alike drafts: a question'),
  'class.alike-what': entry(
    ['title', 'count', 'numbers'],
    '{title}: {count} students drew for different figures, and yet all their free marks and typed numbers are the same; {numbers} of these numbers have no reason on the order.',
  ),
  'class.alike-ask': plain(
    'They may have been worked out together, or copied; or the numbers were read off the board. Look at the drafts, and ask.',
  ),
  'class.ways': plain('Misreadings'),
  'class.way': entry(['target', 'way', 'count', 'worked'], '{target}, “{way}”: {count} of {worked}'),
  'class.said-to': entry(['student', 'says'], 'Said to {student}: “{says}”'),
  'class.open': entry(['student', 'title'], '{student}: open “{title}”'),
  'class.more': entry(['count'], '{count, plural, one {and one more} other {and # more}}'),
  'class.where': plain('Where the answers lie'),
  'class.where-why': plain(
    'Every answer as far off the right one as on the student’s own sheet, laid over the sheet of one figure from the middle of the class. Dotted red: the right answer. Chalk: what its narrowest check allows. Blue: the class.',
  ),
  'class.made': entry(
    ['made', 'worked', 'right'],
    '{made} of {worked} can be laid here; {right, plural, =0 {none is} one {one is} other {# are}} right.',
  ),
  'class.half': entry(
    ['half', 'furthest'],
    'Half of them lie within {half} of the right place; the furthest lies {furthest} off.',
  ),
  'class.half-on': entry(
    ['furthest'],
    'Half of them or more lie on the right place; the furthest lies {furthest} off.',
  ),
  'class.all-off': entry(
    ['count', 'furthest'],
    '{count, plural, one {It lies} other {All of them lie}} {furthest} off the right place.',
  ),
  'class.all-on': plain('All of them lie on it.'),
  'class.lean': entry(['way'], 'The middle of the class lies {way}.'),
  'class.lean-at': entry(['spot', 'way'], 'At the {spot} the middle of the class lies {way}.'),
  'class.lean-most': entry(['way'], 'Where it is furthest off, the middle of the class lies {way}.'),
  'class.lean-not': plain('The middle of the class lies on it.'),
  'class.gathered': entry(['count', 'way'], '{count, plural, one {One lies} other {# lie}} where “{way}” comes out.'),
  'class.cluster': entry(['count', 'way'], '{way}: {count}'),
  'class.chalk-by': entry(
    ['strictness', 'count', 'worked'],
    'The chalk is drawn by the tolerances of {strictness}, by which {count} of these {worked} were marked; the others were marked by other ones.',
  ),
  'class.chalk.learner': plain('learners'),
  'class.chalk.workroom': plain('the workroom'),
  'class.chalk.sample-room': plain('the sample room'),
  'class.range': plain('Here the exercise leaves a range: the dotted answer is one of many right ones.'),
  'class.single': plain('Its checks look at single places, so no chalk is laid along it.'),
  'class.no-place': entry(['targets'], 'Not in a picture: {targets}. A length or an angle has no place on a sheet.'),
  'class.furthest': plain('Furthest off:'),
  'class.no-picture': plain(
    'The exercises could not be fetched from the site, so no picture can be drawn. Load the page again.',
  ),
};
