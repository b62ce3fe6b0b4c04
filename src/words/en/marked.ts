import { entry, plain } from '../entry.ts';

/** What the table says once a draft is marked, and of the set it is drawn for. */
export const marked = {
  // Marking
  'table.check': plain('Check the draft'),
  'table.unanswered': entry(
    ['targets', 'count'],
    'Nothing is pointed out as your {targets} yet. What you drew counts only once you say that it is the answer: in the working, at the step that drew it, choose {count, plural, one {it} other {what it is meant for}} beside “answers”.',
  ),
  'table.point-out': plain('Point it out first'),
  'table.check-anyway': plain('Check it as it stands'),
  'table.checked-from-back': entry(['of'], 'You stood back in the working; all {of} steps were checked.'),
  'table.marks-of': entry(['marks', 'of'], '{marks} of {of} marks'),
  'table.right-of': entry(['right', 'of'], '{right} of {of} right'),
  'table.report-right': entry(['targets'], 'Right: {targets}.'),
  'table.report-none': plain('No answer is wholly right yet. Read on: each note says what to do.'),
  'table.report-none-right': plain('No answer is wholly right yet.'),
  'table.report-all': plain('Everything is right.'),
  'table.off-by': entry(['off'], 'off {off}'),
  'table.off-degrees': entry(['off'], 'off {off}°'),
  'table.others-held-all': entry(
    ['tried'],
    'Tried on {tried} other figures, each with a style of its own, what is right in your draft holds on all of them.',
  ),
  'table.others-held': entry(
    ['held', 'tried'],
    'Tried on {tried} other figures, each with a style of its own, what is right in your draft holds on {held, plural, =0 {none of them} other {#}}.',
  ),
  'table.show-right': plain('Show where it should be'),
  'table.hide-right': plain('Hide where it should be'),
  'table.show-right-note': plain('Showing it is written into what you hand in.'),
  'table.shown-right': plain('The right places are drawn dotted in red.'),
  'table.mend': plain('Mend the draft'),
  'table.back-to-draft': plain('Back to the draft'),
  'table.rub-out-notes': plain('Rub out the notes'),
  'table.checked-right': entry(['right', 'of'], 'Checked: {right} of {of} right.'),
  'table.checks-left': entry(
    ['left'],
    '{left, plural, =0 {It has been checked as often as the set allows. Draw on, and hand it in as it stands.} one {It may be checked once more.} =2 {It may be checked twice more.} other {It may be checked # times more.}}',
  ),

  // In a problem set
  'table.in-set': entry(['title'], 'Drawn for the set “{title}”. It is handed in with the set.'),
  'table.next-in-set': entry(['title'], 'Next in the set: {title}'),
  'table.last-in-set': plain('That was the last of the set: on to handing it in'),
  'table.back-to-set': plain('Back to the set'),
  'table.set-elsewhere': plain(
    'This way leads to an exercise of a set that is not open in this browser. Open the set first; what you draw here is practice.',
  ),
  'table.checked': entry(['marks', 'of'], 'Checked: {marks} of {of} marks.'),
  'table.stale': plain('You have changed the draft since it was checked.'),
};
