import { entry, plain } from '../entry.ts';

/** What the readers of problem sets and of their links say. */
export const sets = {
  'command.set-usage': plain(
    `Makes a problem set and prints its file.

  npm run --silent set -- [options] EXERCISE[=MARKS]... > week-2.set.json

An exercise without marks is worth as many as its checks.

  --title TEXT           what the set is called
  --note TEXT            a word to the class
  --figures WHO          stated: the figures of the exercises (this is the usual); named=amara: one invented person;
                         sampled=women: one figure from the survey for the whole class; each=women: a figure of every
                         student’s own; groups are women, men and anyone
  --seed TEXT            decides the sampled figures; otherwise title and exercises do
  --strictness NAME      learner, workroom (this is the usual) or sample-room
  --house RULE=CHOICE    a house rule, such as stand-rule=quarter-inch-less; may be given again
  --feedback WHAT        what is told on checking: verdict, direction or place (this is the usual)
  --checks NUMBER        how often a draft may be checked; otherwise as often as one likes
  --no-hints             no hints
  --due DATE             2026-03-06, or 2026-03-06T17:00
  --link ADDRESS         print the link instead, for the course that is served at this address
  --help                 print this`,
  ),
  'command.set-due': entry(['found'], 'A date is written 2026-03-06, or 2026-03-06T17:00; “{found}” was found.'),
  'command.set-address': entry(
    ['found'],
    'After --link comes the address of the course, such as https://school.example/collars/; “{found}” was found.',
  ),

  'kind.problem-set': plain('a problem set'),
  'files.set-twice': entry(
    ['exercise', 'first'],
    'The exercise “{exercise}” stands in the set already, at place {first}. Take it out here.',
  ),
  'files.link-long': entry(
    ['length', 'limit'],
    'This set is too long for a link: it would have {length, number} characters, and some programs cut addresses longer than {limit, number}. Hand it out as a file, or shorten the note.',
  ),
  'files.link-broken': plain(
    'This link is damaged: a part of it was lost or changed on the way. Ask for it again, or for the set as a file.',
  ),
  'csv.student': plain('student'),
  'csv.number': plain('number'),
  'csv.sum': plain('marks'),
  'csv.of': plain('of'),
  'csv.remarks': plain('remarks'),
  'csv.by-hand': plain('changed by hand'),
  'csv.grader-gave': entry(['exercise', 'marks'], '{exercise}: the grader gave {marks}'),
  'csv.unread': plain('a piece could not be read'),
  'csv.unread-of': entry(['exercise'], '{exercise}: could not be read'),
  'remark.other-set': plain('handed in for another set'),
  'remark.not-in-set': plain('not an exercise of the set'),
  'remark.other-figure': plain('drawn for another figure than the set gives this student'),
  'remark.figure-of': entry(['name'], 'drawn for the figure that the set gives {name}, and not for this student’s own'),
  'remark.figure-of-number': entry(
    ['number'],
    'drawn for the figure that the set gives number {number}, and not for this student’s own',
  ),
  'remark.figure-unnumbered': plain('drawn for the figure that goes with this name without a number'),
  'remark.other-order': plain('drawn to other measures or house rules than the set has'),
  'remark.late': plain('late'),
  'remark.late-due': entry(['due'], 'late: it was to be handed in by {due}'),
  'remark.checks-over': plain('checked oftener than the set allows'),
  'remark.checks-most': entry(
    ['most'],
    'checked oftener than the set allows, which is {most, plural, one {once} =2 {twice} other {# times}}',
  ),
  'remark.last': entry(
    ['before'],
    'handed in {before, plural, one {once} =2 {twice} other {# times}} before; this is the last, and counts',
  ),
  'remark.since-mended': entry(['targets'], 'mended since the one before: {targets}'),
  'remark.since-spoilt': entry(['targets'], 'right in the one before, and not any more: {targets}'),
  'remark.since-still': entry(['targets'], 'off in the one before, and off again: {targets}'),
  'remark.best': entry(
    ['beside'],
    '{beside, plural, one {another was} other {# others were}} handed in besides; this one earned most, and counts',
  ),
  'remark.not-best': plain('another earned more, or as much later, and counts; this one counts for nothing'),
  'remark.not-last': plain('another was handed in later, and counts; this one counts for nothing'),
  'remark.unread-file': entry(
    ['file'],
    'something else of this student’s could not be read, and may belong here: {file} (why is said under the gradebook)',
  ),
  'remark.alike': entry(
    ['names', 'numbers'],
    'alike to the draft of {names}, though drawn for another figure: all free marks and typed numbers are the same, and {numbers} of these numbers have no reason on the order. It is a question, and no verdict',
  ),
  'remark.alike-many': entry(
    ['count', 'numbers'],
    'alike to the drafts of {count} others, though drawn for other figures: all free marks and typed numbers are the same, and {numbers} of these numbers have no reason on the order. It is a question, and no verdict',
  ),
  'remark.hints-taken': plain('hints taken where there are none'),
  'remark.letters-lost': plain('a letter of the name is lost, because the file is not in UTF-8'),
  'remark.places-shown': plain('right places shown where they are not'),
  'command.said': entry(['said'], '{said}'),
  'command.set-file': entry(['file', 'why'], 'The set in {file} cannot be used. {why}'),

  'wants.problem-set': plain('a problem set: a group of fields such as title, exercises and figures'),
  'wants.set-title': plain('the title of the set, in one line of at most 200 characters'),
  'wants.set-note': plain('a note to the class of at most 2000 characters; it may be empty'),
  'wants.set-exercises': plain('a list of exercises, each with its marks'),
  'wants.set-exercise': plain('an exercise of the set: exercise and marks'),
  'wants.set-marks': plain('a whole number of marks from 1 to 1000'),
  'wants.set-figures': plain(
    '“stated” for the figures of the exercises; or a group with “named” and an invented figure for everybody, “sampled” and a group for one figure from the survey for everybody, or “each” and a group for a figure of every student’s own',
  ),
  'wants.set-seed': plain('a seed, in one line of at most 60 characters'),
  'wants.feedback': plain('what is told when a draft is checked'),
  'wants.set-checks': plain('a whole number of checks from 1 to 100, or null for as many as one likes'),
  'wants.set-hints': plain('true or false: whether there are hints'),
  'wants.due': plain('a date and time such as 2026-02-14T09:30:00.000Z, or null'),
};
