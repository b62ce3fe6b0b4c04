import { entry, plain } from '../entry.ts';

/** What stands on the sheet that a student gets back, and about making them. */
export const feedback = {
  'feedback.open': plain('Feedback sheets'),
  'feedback.title': plain('Feedback sheets'),
  'feedback.lead': plain(
    'One sheet a student, as they will be printed. Nothing else of this page is printed with them.',
  ),
  'feedback.whose': plain('Whose sheet'),
  'feedback.all': plain('all students'),
  'feedback.print': plain('Print'),
  'feedback.close': plain('Close the sheets'),
  'feedback.making': entry(['done', 'of'], '{done} of {of} sheets are made.'),
  'feedback.made': entry(['of'], '{of, plural, one {The sheet is} other {# sheets are}} ready to print.'),
  'feedback.number': entry(['number'], 'Number {number}'),
  'feedback.due': entry(['due'], 'To be handed in by {due}.'),
  'feedback.due-own': entry(['due', 'until'], 'To be handed in by {due}; you were given time until {until}.'),
  'feedback.saved': entry(['saved'], 'Saved on {saved}.'),
  'feedback.remarks': entry(['remarks'], 'Noted: {remarks}.'),
  'feedback.total': entry(['marks', 'of'], '{marks} of {of} marks'),
  'feedback.unread': entry(
    ['count'],
    '{count, plural, one {A piece of your work} other {# pieces of your work}} could not be read. Ask your teacher whether it has to be handed in again.',
  ),
  'feedback.not-read': plain('What was handed in for this exercise could not be read.'),
  'feedback.one': plain('Feedback sheet'),
  'feedback.one-of': entry(['student'], 'Feedback sheet of {student}'),
  'feedback.nothing': plain('Nothing was handed in for this exercise.'),
  'feedback.all-right': plain('Everything is right.'),
  'feedback.right': entry(['targets'], 'Right: {targets}.'),
  'feedback.changed': entry(
    ['grader', 'of', 'own', 'reason'],
    'The course gives {grader} of {of}. Your teacher gives {own} of {of}: {reason}',
  ),
  'feedback.counts': entry(['grader'], 'Your teacher’s marks count; the course gives {grader}.'),
  'feedback.comment': plain('Your teacher writes'),
};
