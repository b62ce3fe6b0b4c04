import { entry, plain } from '../entry.ts';

/** What the marking desk says of the marks and comments that a teacher gives. */
export const teacherMarks = {
  'mark.grader-gives': entry(['marks', 'of'], 'The grader: {marks} of {of}'),
  'mark.own-gives': entry(['marks', 'of', 'reason'], 'Yours: {marks} of {of}. {reason}'),
  'mark.own-total': entry(
    ['marks', 'of', 'grader'],
    'Changed by hand: {marks} of {of} marks count, where the grader gave {grader}.',
  ),
  'mark.own-change': plain('Change the mark'),
  'mark.own-change-what': entry(['target'], 'Change the mark for the {target}'),
  'mark.own-again': plain('Change it again'),
  'mark.own-back': plain('Take it back'),
  'mark.own-back-what': entry(['target'], 'Take back your mark for the {target}'),
  'mark.own-marks': entry(['of'], 'Marks, of {of}'),
  'mark.own-reason': plain('Reason'),
  'mark.own-give': plain('Give this mark'),
  'mark.own-leave': plain('Leave it'),
  'mark.own-given': entry(['target'], 'Your mark for the {target} counts now.'),
  'mark.own-taken-back': entry(['target'], 'The grader’s mark for the {target} counts again.'),
  'mark.own-not-marks': entry(['of'], 'Write the marks as a number from 0 to {of}.'),
  'mark.own-over': entry(['of'], 'No more than {of} can be earned here. Write a number from 0 to {of}.'),
  'mark.own-no-reason': plain('Give a reason: the student reads it beside the mark.'),
  'mark.comment-piece': plain('Your comment on this work'),
  'mark.comment-student': entry(['student'], 'Your comment to {student} on everything'),
  'mark.by-hand': entry(['grader'], 'changed by hand; the grader gave {grader}'),
  'mark.loose': plain('Marks and comments that belong to nothing that counts'),
  'mark.loose-why': plain(
    'They are kept, and counted nowhere. Open the work that counts, and give them there if they still hold.',
  ),
  'mark.loose-mark': entry(
    ['student', 'title', 'target', 'marks', 'of', 'reason'],
    '{student}, {title}, {target}: {marks} of {of}. {reason}',
  ),
  'mark.loose-comment': entry(['student', 'title', 'comment'], '{student}, {title}: “{comment}”'),
  'mark.loose-earlier': plain('Another draft was handed in later, and counts.'),
  'mark.loose-target': plain('The exercise does not ask for this, or not for so many marks, any more.'),
  'mark.loose-unmarked': plain('The work itself could not be marked.'),
  'mark.loose-remove': plain('Remove it'),
};
