import { entry, plain } from '../entry.ts';

/** What the readers of the files people pass around say. */
export const files = {
  'files.style-strange': entry(
    ['name', 'known'],
    '“{name}” is no style measure that a hand-in may change: those are {known}. A measure of an exercise’s own is always as the exercise states it; leave it out.',
  ),
  'files.at': entry(['place', 'said'], '{place}: {said}'),
  'files.more': entry(
    ['said', 'more'],
    '{said} ({more, plural, one {One more place does} other {# more places do}} not fit.)',
  ),
  'files.empty': plain('The file is empty. Save it again where it was made.'),
  'files.not-json': plain(
    'This is not a whole file of the course: it is cut off, or was changed by hand. Save it again where it was made.',
  ),
  'files.not-json-at': entry(
    ['line', 'column'],
    'This is not a whole file of the course: it can be read as far as line {line}, column {column}. It is cut off there, or was changed by hand. Save it again where it was made.',
  ),
  'files.not-utf8': plain(
    'This is not saved as UTF-8. Save it again from the table, or where it was saved as text, choose UTF-8 there.',
  ),
  'files.too-large': entry(
    ['limit'],
    'This is larger than {limit} kilobytes, and no such file of the course is. Look whether it is the right file.',
  ),
  'kind.hand-in': plain('a hand-in'),
  'files.not-this': entry(
    ['kind', 'format', 'found'],
    'This is not {kind}: “format” should be “{format}”, and {found} was found. Look whether it is the right file.',
  ),
  'files.version-newer': entry(
    ['found', 'known'],
    'This was written in version {found} of its format, and this program reads version {known}. Open it with a newer version of the course.',
  ),
  'files.version': entry(['found', 'known'], 'The version of the format should be {known}; {found} was found.'),
  'files.no-exercise': entry(
    ['name'],
    'This copy of the course has no exercise “{name}”. A teacher may have added it to another copy: open this there, or ask whoever handed it out.',
  ),
  'files.wrong-exercise-part': entry(['why'], 'The draft does not fit the exercise it names. {why}'),
  'files.house-unmet': entry(
    ['rule', 'choice', 'missing'],
    'The house rule “{rule}: {choice}” needs the style measure “{missing}”, and the order does not state it. Add it to the style.',
  ),

  'wants.hand-in': plain('a hand-in: a group of fields such as student, exercise and steps'),
  'wants.student': plain('the student’s name, in one line of at most 200 characters'),
  'wants.number': plain('the student’s number, in one line of at most 40 characters; it may be empty'),
  'wants.set': plain('the problem set, by its title and id, or null'),
  'wants.set-id': plain('the id of a set: eight digits from 0 to f'),
  'wants.checks-used': plain('a whole number: how often the draft was checked'),
  'wants.exercise-name': plain('the name of an exercise'),
  'wants.order': plain('an order: figure, style and house'),
  'wants.figure-recipe': plain(
    'a figure: either “named” with an invented figure, or “sampled” and “seed”, or “measures” with the body’s measures',
  ),
  'wants.seed': plain('a seed, in one line of at most 300 characters'),
  'wants.measures': plain('the body’s measures by name'),
  'wants.style-values': plain('style measures by name, each a length with its unit'),
  'wants.strictness': plain('a strictness'),
  'wants.unit': plain('a unit of length'),
  'wants.shown': plain('a list of the targets whose right place was asked for'),
  'wants.hints-taken': plain('targets by name, each with the number of hints taken'),
  'wants.hint-tier': plain('1, 2 or 3'),
  'wants.saved': plain('a date and time such as 2026-02-14T09:30:00.000Z, or null'),
  'what.exercise': plain('exercise'),
};
