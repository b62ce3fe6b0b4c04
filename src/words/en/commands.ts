import { entry, plain } from '../entry.ts';

/** What the commands say at the command line. */
export const commands = {
  'command.grade-usage': plain(
    `Marks hand-ins: replays every draft and grades it again.

  npm run --silent grade -- [options] PATH...

PATH is a file, a folder (its .json, .jsonl and .ndjson files, and those of the folders in it), or - for
standard input. A file holds one hand-in, or one a line.

  --set FILE          mark as work of this problem set: by its strictness, to its marks, with remarks on what is late
                      or otherwise not as the set has it; without it, the set that lies among the files is taken, if
                      it is the only one
  --strictness NAME   mark by learner, workroom or sample-room, whatever the hand-in says
  --json              print one JSON line for every piece of work, at a terminal too
  --summary           print the report on the class instead, as JSON: for every check what it earned and which
                      misreadings were made, for every exercise how it tells good work from poor
  --csv               print the gradebook instead, as CSV: a line a student, a column an exercise
  --bom               with --csv: begin with the mark by which a spreadsheet knows UTF-8, as the file that the desk
                      saves does; leave it out where another program reads on
  --best              with --csv or --summary: of what a student handed in more than once count what earned most, and
                      not what was saved last
  --cores NUMBER      work on so many cores; otherwise on all there are
  --help              print this

At a terminal a table is printed, otherwise one JSON line for every piece of work. What cannot be read is told in
one line on standard error, and the rest go on; the exit status is then 1.

In the table, “right holds” is on how many other figures everything that is right here is right too; “how” says how
many hints were taken, how many right places were shown, and whether the order or the strictness is not the usual one.`,
  ),
  'command.reference-usage': plain(
    `Draws the reference of an exercise and prints it as one JSON object.

  npm run --silent reference -- EXERCISE [options]

  --figure FILE          the body’s measures as JSON, in mm and degrees; otherwise the exercise’s own figure
  --style NAME=VALUE     a style measure, such as overlap="1 1/4 in"; may be given again
  --house RULE=CHOICE    a house rule, such as stand-rule=quarter-inch-less; may be given again
  --seed TEXT            which figure, where the exercise samples one
  --help                 print this

Lengths are in mm. The origin lies where the centre front crosses the waist; x runs to the right, y up.`,
  ),
  'command.reference-sound': entry(
    ['exercise', 'targets', 'checks', 'marks', 'misreadings'],
    '{exercise}.yaml has no fault: {targets, plural, one {# target} other {# targets}}, {checks, plural, one {# check} other {# checks}} for {marks, plural, one {# mark} other {# marks}}, {misreadings, plural, one {# misreading} other {# misreadings}}. The reference can be drawn on every invented figure and on other orders, and there every misreading comes out wrong.',
  ),
  'command.bom-alone': plain('“--bom” goes with “--csv”: nothing else begins with a mark.'),
  'command.best-alone': plain('“--best” goes with “--csv” or “--summary”: otherwise every piece is told.'),
  'command.cores': entry(['found'], '--cores is followed by a number from 1 to 999; “{found}” was found.'),
  'command.progress': entry(
    ['marked', 'refused'],
    '{marked, number} marked{refused, plural, =0 {} other {, # could not be read}}',
  ),
  'command.stopped': entry(
    ['marked', 'refused'],
    'Stopped before the end. This is a part: {marked, plural, =0 {no piece} one {one piece} other {# pieces}} of work marked{refused, plural, =0 {} other {, and # that could not be read}}.',
  ),
  'command.usage': entry(['said', 'usage'], '{said}\n\n{usage}'),
  'command.unknown-option': entry(['option'], 'There is no option “{option}”.'),
  'command.option-value': entry(['option'], 'The option “{option}” needs a value after it.'),
  'command.option-bare': entry(['option'], 'The option “{option}” takes no value.'),
  'command.no-path': plain('Say what is to be marked: a file, a folder, or - for standard input.'),
  'command.no-exercise': entry(['known'], 'Say which exercise. There are: {known}.'),
  'command.one-exercise': entry(['found'], 'One exercise at a time; “{found}” is one too many.'),
  'command.pair': entry(
    ['option', 'found'],
    '“{option}” is followed by a name, an equals sign and a value; “{found}” was found.',
  ),
  'what.style-measure': plain('style measure of this exercise'),
  'what.option-strictness': plain('strictness'),

  'command.missing': plain('There is no such file or folder.'),
  'command.forbidden': plain('This may not be read: its permissions forbid it.'),
  'command.unreadable': entry(['code'], 'This cannot be read ({code}).'),
  'command.folder': plain('This is a folder, and a file is wanted.'),
  'command.folder-empty': plain('Nothing to mark here: the folder holds no .json, .jsonl or .ndjson file.'),
  'command.strange-again': entry(
    ['name', 'count', 'places', 'more'],
    '“{name}”, which there is no exercise of, is named by {count, plural, one {one piece} other {# pieces}} more{more, plural, =0 {: } other {, among them }}{places}.',
  ),
  'command.unwritten': entry(
    ['why'],
    'What was to be printed could not be written ({why}). The last line of it may be cut off.',
  ),
  'command.stumbled': entry(
    ['why'],
    'This could not be marked: the grader itself stumbled over it ({why}). Please report it, with the file.',
  ),
  'command.set-met-own': entry(['title'], 'This is the problem set “{title}”; the work is marked by it.'),
  'command.set-met-other': entry(['title'], 'This is the problem set “{title}”; the work is marked by another.'),
  'command.set-met': entry(
    ['title'],
    'This is the problem set “{title}”, and no work. It counts for nothing here: name the set to mark by with --set.',
  ),
  'command.passed-over': entry(
    ['count', 'files', 'more'],
    '{count, plural, one {One file was} other {# files were}} passed over, for work is in regular .json, .jsonl and .ndjson files: {files}{more, plural, =0 {} other {, and # more}}.',
  ),
  'command.figure': entry(['file', 'why'], 'The figure in {file} cannot be used. {why}'),
  'command.not-json': plain('It is not JSON.'),

  'grade-table.student': plain('student'),
  'grade-table.exercise': plain('exercise'),
  'grade-table.marks': plain('marks'),
  'grade-table.others': plain('right holds'),
  'grade-table.flags': plain('how'),
  'grade-table.file': plain('file'),
  'grade-table.of': entry(['marks', 'of'], '{marks} / {of}'),
  'grade-table.held': entry(['held', 'tried'], 'on {held} of {tried}'),
  'grade-table.none-tried': plain('not tried'),
  'grade-table.nobody': plain('(no name)'),
  'grade-table.off': entry(['off', 'unit', 'tolerance'], '{off} {unit} off, {tolerance} allowed'),
  'grade-table.hints': entry(['count'], '{count, plural, one {# hint} other {# hints}}'),
  'grade-table.shown': entry(['count'], '{count} shown'),
  'grade-table.other-order': plain('other order'),
  'grade-table.not-made': entry(['step'], 'step {step} could not be drawn'),
  'grade-table.missing': plain('nothing handed in'),
  'grade-table.unread': plain('runs across, or too far off to measure'),
  'grade-table.carried': plain('judged from an earlier slip'),
  'grade-table.sum': entry(
    ['marked', 'refused'],
    '{marked, plural, one {One piece} other {# pieces}} of work marked.{refused, plural, =0 {} one { One could not be read.} other { # could not be read.}}',
  ),
};
