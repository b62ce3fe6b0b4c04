import { entry, plain } from '../entry.ts';

/** The drafting table and every drawing of a sheet. */
export const table = {
  'table.table': plain('Drafting table'),
  'table.label': entry(['name'], '{name}'),
  'table.shows-given': entry(['names'], 'On the sheet lies the block: {names}.'),
  'table.shows-made': entry(['names'], 'Drawn so far: {names}.'),
  'table.shows-nothing': plain('The sheet is empty.'),

  // What a change did, said aloud
  'table.made': entry(['name'], '{name} made.'),
  'table.made-mark': entry(['name', 'where'], '{name} made, {where}.'),
  'table.made-through': entry(['name', 'marks'], '{name} made, through {marks}.'),
  'table.made-length': entry(['name', 'length'], '{name} taped: {length}.'),
  'table.made-angle': entry(['name', 'angle'], '{name} read: {angle}.'),
  'table.not-made': entry(['why'], 'The step stands in the working, but nothing is drawn. {why}'),
  'table.moved': entry(['name', 'where'], '{name} moved, {where}.'),
  'table.bent': entry(['name'], '{name} bent.'),
  'table.place': entry(
    ['height', 'level', 'aside', 'side'],
    '{level, select, on {on the waist} below {{height} below the waist} other {{height} above the waist}} and {side, select, on {on the centre front} left {{aside} left of the centre front} other {{aside} right of the centre front}}',
  ),
  'table.place-on': entry(['on', 'place'], 'on {on}, {place}'),
  'table.erased': entry(['name'], '{name} erased. What was not built on it still stands.'),
  'table.amended': entry(
    ['name', 'problems'],
    '{name} changed. {problems, plural, =0 {Everything after it follows.} one {One step no longer stands.} other {# steps no longer stand.}}',
  ),
  'table.renamed': entry(['was', 'name'], '{was} is now called {name}.'),
  'table.answers-target': entry(['name', 'target'], '{name} is your {target}.'),
  'table.answers-none': entry(['name'], '{name} answers nothing now.'),
  'table.stands-at': entry(
    ['step', 'of'],
    '{step, plural, =0 {Before the first step.} other {After step {step} of {of}.}}',
  ),
  'table.undone': entry(
    ['of'],
    'Undone. {of, plural, =0 {The working is empty.} one {One step stands in the working.} other {# steps stand in the working.}}',
  ),
  'table.redone': entry(
    ['of'],
    'Done again. {of, plural, =0 {The working is empty.} one {One step stands in the working.} other {# steps stand in the working.}}',
  ),
  'table.cleared': plain('The sheet is cleared. Undo brings your draft back.'),
  'table.opened': entry(['count'], 'Draft opened: {count, plural, one {one step} other {# steps}}.'),

  // The sheet
  'table.sheet': plain('The sheet'),
  'table.sheet-keys': plain(
    'Arrow keys move the pointer, with Shift a millimetre at a time; Enter points. Plus and minus zoom, 0 fits the sheet.',
  ),
  'table.zoom-in': plain('Closer'),
  'table.zoom-out': plain('Further'),
  'table.fit': plain('Whole'),
  'table.undo': plain('Undo'),
  'table.redo': plain('Redo'),
  'table.pointer-at': entry(['place', 'caught'], '{caught, select, none {} other {{caught}: }}{place}'),
  'table.pointed': entry(['what'], '{what} taken.'),
  'table.free-mark': entry(['name'], '{name}, a free mark. Arrow keys move it.'),
  'table.handle': entry(['name', 'number'], 'Handle {number} of {name}. Arrow keys move it.'),
  'table.asleep': plain(
    'The table could not be laid out: its script did not arrive. Load the page again. Your draft is kept.',
  ),

  // The working
  'table.working': plain('Working'),
  'table.working-empty': plain(
    'Nothing drawn yet. Each step you draw is written here as an instruction that anyone can follow.',
  ),
  'table.answers': plain('answers'),
  'table.answers-nothing': plain('nothing'),
  'table.answers-for': entry(['name'], '{name} answers'),
  'table.erase': plain('Erase'),
  'table.erase-step': entry(['name'], 'Erase {name}'),
  'table.stand-here': entry(['number'], 'Stand after step {number}'),
  'table.step-back': plain('Step back'),
  'table.step-on': plain('Step on'),
  'table.step-end': plain('To the end'),
  'table.standing': entry(['step', 'of'], '{step} of {of}'),
  'table.name-of': entry(['name'], 'Name of {name}'),
  'table.called': plain('called'),
  'table.makes-length': entry(['length'], '= {length}'),
  'table.clear-sheet': plain('Clear the sheet'),
  'table.stays-by-eye': entry(
    ['name'],
    'Made by eye: {name} stays here when the figure changes. Laid off from the block, it would follow.',
  ),
  'table.stays-number': entry(
    ['typed', 'name'],
    'On this order {typed} comes to the {name}, but it stays {typed} on every other. If the {name} is meant, write the name.',
  ),

  // The brief
  'table.brief': plain('The order'),
  'table.figure-of': entry(['name'], 'For {name}'),
  'table.figure-unnamed': plain('For a figure dealt by chance'),
  'table.figure-survey': plain(
    'It is nobody’s own: its measures are such as the 2012 Anthropometric Survey of U.S. Army Personnel found in 6,068 adults.',
  ),
  'table.figure-own': plain('For your own measures'),
  'table.measures': plain('Body'),
  'table.style': plain('Style'),
  'table.house-rules': plain('House rule'),
  'table.taken': plain('Measured already'),
  'table.asks': plain('Marks are given for'),
  'table.asks-marks': entry(['marks'], '{marks, plural, one {# mark} other {# marks}}'),
  'table.asks-answered': plain(', answered'),

  // Hints
  'table.hints': plain('Hints'),
  'table.hint-for': entry(['target'], 'Hint: {target}'),
  'table.hint-more': plain('One more hint'),

  // Another figure, house rules, strictness
  // Common practice, no source; the measures are those of ISO 8559-1, as docs/method.md says.
  'table.to-take': plain(
    'Have somebody take them, over a shirt, with a tape tied round the waist. You stand upright and look ahead. Each is taken twice.',
  ),
  'table.to-take.neck-base': plain(
    'Round the foot of the neck, with the tape on its edge: over the bone that stands out behind when the head is bent, and through the hollow between the collarbones.',
  ),
  'table.to-take.shoulder': plain(
    'From where the side of the neck turns into the shoulder, along the top of the shoulder, to where the arm begins.',
  ),
  'table.to-take.shoulder-slope': plain(
    'How far the shoulder falls from the level. Without an instrument for it leave 22.5°, which stands for whoever gives none.',
  ),
  'table.to-take.front-waist': plain(
    'From the hollow between the collarbones, not from the shoulder, straight down to the waist.',
  ),
  'table.to-take.back-waist': plain('From the bone at the back of the neck straight down to the waist.'),
  'table.measure-empty': plain('Nothing is written here. Write what the tape showed, with its unit.'),
  'table.measure-out': entry(
    ['found', 'least', 'most'],
    'This is {found}. An adult’s lies between {least} and {most}: look at the tape again, and at the unit.',
  ),
  'table.measures-swapped': plain(
    'Laid on the table. But the front waist length is longer than the back waist length, which is very rare: look whether the two are swapped.',
  ),
  'table.setup': plain('Figure, house rules, strictness'),
  'table.figure': plain('Figure'),
  'table.figure-person': entry(['name', 'note'], '{name}. {note}'),
  'table.figure-sampled': plain('A new sampled figure'),
  'table.figure-another': plain('Another figure'),
  'table.figure-typed': plain('My own measures'),
  'table.take-figure': plain('Lay it on the table'),
  'table.figure-kept': plain('Your working stays and is replayed on the new figure.'),
  'table.strictness': plain('Strictness'),
  'table.strictness.learner': plain('Learner: twice the workroom’s tolerance'),
  'table.strictness.workroom': plain('Workroom'),
  'table.strictness.sample-room': plain('Sample room: half of it'),

  // Live figures
  'table.live-hint': entry(
    ['marks'],
    'Drag the ringed {marks, plural, one {mark} other {marks}}, or reach {marks, plural, one {it} other {them}} with Tab and move {marks, plural, one {it} other {them}} with the arrow keys.',
  ),
  'table.live-back': plain('Put it back'),
};
