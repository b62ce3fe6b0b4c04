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
  'mark.own-back': plain('Take back your mark'),
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
  'kind.marking': plain('a marking file'),
  'files.marks-over': entry(['marks', 'of'], '{marks} marks are more than the {of} that could be earned.'),
  'files.student-twice': entry(
    ['first'],
    'This student is written to already, at place {first}. Take one of the two out.',
  ),
  'wants.marking': plain('a marking file: a group of fields such as set, work and students'),
  'wants.found': plain('the name of a file, in one line of at most 1000 characters'),
  'wants.filed-set': plain('a problem set as its own file holds it, or null'),
  'wants.filed-work': plain('a list of at most 20000 pieces of work'),
  'wants.filed-piece': plain('a piece of work: found, handIn, marks and comment'),
  'wants.filed-hand-in': plain('a hand-in as its own file holds it'),
  'wants.own-mark-list': plain('targets by name, each with the mark the teacher gave'),
  'wants.own-mark': plain('a teacher’s mark: marks, of and reason'),
  'wants.own-marks': plain('a number of marks, 0 or more and no more than could be earned'),
  'wants.own-of': plain('a number: how many marks could be earned'),
  'wants.own-reason': plain('a reason of at most 1000 characters; it may not be empty'),
  'wants.comment': plain('a comment of at most 4000 characters; it may be empty'),
  'wants.student-comments': plain('a list of students, each with a comment'),
  'wants.student-comment': plain('a comment to a student: student, number and comment'),
  'wants.class-list': plain('a class list of at most 40000 characters, a student a line'),
  'wants.unread': plain('a list of at most 20000 pieces that could not be read'),
  'wants.filed-unread': plain(
    'the name of a file that could not be read, in one line of at most 1000 characters; or a group: found, its name, with begun and why where they are known',
  ),
  'wants.why-unread': plain('why it could not be read, at most 2000 characters'),
  'wants.begun': plain('the beginning of a hand-in, at most 524288 characters'),

  'mark.save': plain('Save all the work'),
  'mark.saved': entry(
    ['file'],
    '“{file}” is saved: the set, the hand-ins, your marks and comments. Lay it down here to go on.',
  ),
  'mark.too-much': plain(
    'This is more than one marking file holds: 20,000 pieces of work, or 64 megabytes. Clear the desk, and mark the hand-ins in parts.',
  ),
  'mark.stopped-piece': plain('Marking was stopped before this piece was marked. It is kept.'),
  'mark.stopped-on': entry(['count'], 'Mark {count, plural, one {it} other {these #}} now'),
  'mark.was-unread': plain('When the work was saved this had not been read, or not to its end. Lay it down again.'),
  'mark.was-unread-why': entry(['why'], '{why}'),
  'mark.clashed': entry(
    ['clashes'],
    '{clashes, plural, one {In one place} other {In # places}} the marking file has another mark or comment than the desk. What lay on the desk stays. To see the other, save all the work, clear the desk and lay the file down.',
  ),

  'mark.kept': plain(
    'Kept in this browser as you mark. “Save all the work” makes the file that goes with you to another.',
  ),
  'mark.not-kept-full': plain(
    'The work on this desk is not being kept: there is no room left for it in this browser. Save all the work as a file before you leave.',
  ),
  'mark.not-kept-forbidden': plain(
    'The work on this desk is not being kept: this browser does not let the page keep anything. Save all the work as a file before you leave.',
  ),
  'mark.kept-offer': entry(
    ['title', 'pieces', 'students', 'saved'],
    'Work on “{title}” lies in this browser: {pieces, plural, one {one piece} other {# pieces}} by {students, plural, one {one student} other {# students}}, kept on {saved}.',
  ),
  'mark.kept-offer-plain': entry(
    ['pieces', 'students', 'saved'],
    'Work lies in this browser: {pieces, plural, one {one piece} other {# pieces}} by {students, plural, one {one student} other {# students}}, kept on {saved}.',
  ),
  'mark.kept-offer-unknown': plain('Work from an earlier time lies in this browser.'),
  'mark.kept-what': plain('Work kept in this browser'),
  'mark.kept-wait': plain('Until you choose, nothing new is kept.'),
  'mark.kept-go-on': plain('Go on with it'),
  'mark.kept-save': plain('Save it as a file'),
  'mark.kept-away': plain('Put it away'),
  'mark.kept-away-sure': plain(
    'That takes it out of this browser for good. Save it as a file first if it is still wanted. Press again to put it away.',
  ),
  'mark.kept-damaged': plain(
    'The work kept in this browser is damaged and cannot be read. Save the raw file if you want it looked at, then start clean.',
  ),
  'mark.kept-damaged-save': plain('Save the raw file'),
  'mark.kept-damaged-start': plain('Start clean'),
  'mark.kept-elsewhere': plain(
    'The work on this desk was changed in another tab or window meanwhile. Until you choose, what you do here is not kept.',
  ),
  'mark.kept-together': plain('Put both together here'),
  'mark.kept-take': plain('Lay the other one here'),
  'mark.kept-mine': plain('Keep the one here'),
  'mark.clear-sure': plain(
    'That takes everything off the desk and out of this browser, with your marks and comments. Save all the work first if it is still wanted. Press again to clear it.',
  ),

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
  'mark.loose-hand-on': plain('Give it to the draft that counts'),
  'mark.loose-remove': plain('Remove it'),
};
