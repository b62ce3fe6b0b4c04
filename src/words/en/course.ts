import { entry, plain } from '../entry.ts';

/** The pages of the course: what stands around the lessons. */
export const course = {
  'course.name': plain('Gorgeline'),
  'course.page-title': entry(['title'], '{title} · Gorgeline'),
  'course.skip': plain('Skip to the text'),
  'course.nav': plain('The course'),
  'course.nav-lessons': plain('Lessons'),
  'course.nav-exercises': plain('Exercises'),
  'course.nav-glossary': plain('Glossary'),
  'course.nav-about': plain('Sources and limits'),
  'course.unit': plain('Lengths in'),
  'course.unit-cm': plain('cm'),
  'course.unit-in': plain('inches'),
  'course.foot-private': plain(
    'Nothing you read or draw here leaves this machine. You hand work in yourself, as a file.',
  ),
  'course.foot-licence': plain('Free software under the MIT licence.'),

  'course.home-title': plain('Draft the collar and lapel of a jacket'),
  'course.home-lead': plain(
    'You draw on a pattern table. Your draft is then marked line by line: what is right, what is off, by how much, which way, and why it shows on the body.',
  ),
  'course.home-try': plain('Take hold of the break point and drag it. The lapel turns on the roll line.'),
  'course.home-pictures': plain(
    'The two fronts of a jacket, buttoned, with their lapels turned back. The roll line of the upper one runs from the break point on its edge to the stand point beside the neck.',
  ),
  // An author's text for the live figure: its braces are filled there, so they are quoted here.
  'course.home-says': plain(
    "The break point is '{break-rise}' above the waist, and the roll line '{roll-length}' long.",
  ),
  'course.home-begin': plain('Begin with the overlap'),
  'course.home-draw': plain('Go straight to the roll line exercise'),
  'course.home-learner': plain('What you do as a learner'),
  'course.home-learner-read': plain(
    'Read a short lesson. Its pictures are drafts: take hold of a mark and see what follows.',
  ),
  'course.home-learner-draw': plain(
    'Draw the construction on the table, for one person’s measures, with the tools a pattern table has: square, rule, compass, tape.',
  ),
  'course.home-learner-marked': plain(
    'Have it marked. The red pencil writes on your sheet, and one slip is charged once, not down the whole line.',
  ),
  'course.home-learner-again': plain('Mend it, or draw it again for another figure, a body with other measures.'),
  'course.home-desk': plain('Set work for a class, and mark it'),
  'course.home-teacher': plain('What you get as a teacher'),
  'course.home-teacher-files': plain(
    'Hand-ins are files. Each holds the steps of the draft, never a score to be trusted: lay a whole folder on the desk, or give it to one command, and every draft is drawn again and marked.',
  ),
  'course.home-teacher-figures': plain(
    'Every draft is also tried on other figures. A line that was measured holds there; one that was eyeballed does not, and the mark says which step let go.',
  ),
  'course.home-teacher-rules': plain(
    'Where good handbooks differ, you choose the house rule, with its source, and the reference follows it.',
  ),
  'course.home-teacher-strict': plain('You choose how hard to mark: learner, workroom or sample room.'),

  'course.contents-title': plain('Lessons'),
  'course.contents-lead': plain('Read them in order. Each one ends at the drafting table.'),
  'course.contents-exercises': plain('At the table'),
  'course.contents-read': plain('Read'),
  'course.exercises-title': plain('Exercises'),
  'course.exercises-lead': plain('Everything there is to draw, by lesson. Open one at the table.'),
  'course.exercises-set': plain('Has your teacher handed out a set? Open it here.'),
  'course.exercises-all': plain('All exercises'),
  'course.exercise-lesson': entry(['title'], 'Read the lesson: {title}'),
  'course.exercise-next': entry(['title'], 'Next at the table: {title}'),
  'course.exercise-asleep': plain(
    'The table needs scripting to be drawn on. Without it this page shows the order and the block.',
  ),
  'course.exercise-worth': entry(['marks'], '{marks, plural, one {# mark} other {# marks}}'),
  'course.exercise-begun': plain('Begun'),
  'course.exercise-got': entry(['marks', 'of'], '{marks} of {of} marks'),
  'course.contents-kept': plain('What you have read and drawn is kept in this browser only.'),

  'course.lesson-number': entry(['number'], 'Lesson {number}'),
  'course.lesson-exercises': plain('Now draw it'),
  'course.lesson-words': plain('Words of this lesson'),
  'course.lesson-sources': plain('Sources of this lesson'),
  'course.lesson-read': plain('I have read this lesson'),
  'course.lesson-next': entry(['title'], 'Next lesson: {title}'),
  'course.lesson-all': plain('All lessons'),
  'course.lesson-nav': plain('Where to go from here'),

  'course.term-more': plain('In the glossary'),
  'course.caution': plain('Take care'),
  'course.right': plain('Right'),
  'course.wrong': plain('Wrong'),
  'course.answer-right': plain('Yes.'),
  'course.answer-wrong': plain('No.'),
  'course.check-hint': plain('Choose an answer: the reason opens under it.'),
  'course.check-count': entry(
    ['right', 'of'],
    '{right, plural, =0 {None of the {of} questions answered right yet.} other {{right} of {of} questions answered right.}}',
  ),

  'course.worked-order': plain('The order'),
  'course.worked-steps': plain('The draft'),
  'course.worked-called': entry(['name'], 'Called {name}.'),
  'course.worked-readings': plain('What it comes to'),
  'course.worked-measure': plain('Measure'),
  'course.worked-cm': plain('Centimetres'),
  'course.worked-in': plain('Inches'),
  'course.worked-for': entry(['name'], 'For {name}'),

  'course.rule-choice': plain('Rule'),
  'course.rule-source': plain('Source'),
  'course.button-column': plain('Button'),

  'course.glossary-title': plain('Glossary'),
  'course.glossary-lead': plain('The words of the trade that the lessons and the table use.'),
  'course.glossary-also': entry(['names'], 'Also: {names}.'),
  'course.glossary-see': plain('See'),
  'course.about-sources': plain('Sources'),

  // Objects that only the figures of the lessons have.
  'name.middle-line': plain('centre front'),
  'name.under-middle': plain('the other centre front'),
  'name.under-edge': plain('edge beneath'),
  'name.first-row': plain('first row'),
  'name.neck-cut': plain('neck'),
  'name.shoulder-cut': plain('shoulder'),
  'name.false-break': plain('break point drawn'),
  'name.right-line': plain('roll line as it should be'),

  'course.missing-title': plain('This page is not on the table'),
  'course.missing-lead': plain('The address leads nowhere. It may have been mistyped, or the page has moved.'),
  'course.missing-home': plain('Go to the start of the course'),
};
