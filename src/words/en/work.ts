import { entry, plain } from '../entry.ts';

/** What a student is told of a problem set that is being worked on. */
export const work = {
  'work.title': plain('A set to work on'),
  'work.lead': plain('Work that your teacher handed out: do its exercises, and hand in one file.'),
  'work.none': plain('No set is open. Follow the link you were given, or open the file.'),
  'work.open': plain('Open a file'),
  'work.opened-hand-in': entry(
    ['count'],
    '{count, plural, one {One draft is} other {# drafts are}} taken from the file.',
  ),
  'work.opened-over': entry(
    ['count', 'over'],
    '{count, plural, one {One draft is} other {# drafts are}} taken from the file. {over, plural, one {One took} other {# took}} the place of another draft.',
  ),
  'work.put-back': plain('Put back what lay here before'),
  'work.was-put-back': plain('The drafts lie here again as they did before.'),
  'work.opened-set': entry(['title'], '“{title}” is opened.'),
  'work.other-set': entry(['title'], 'This hand-in belongs to another set, “{title}”. Open that set first.'),
  'work.due': entry(['due'], 'To be handed in by {due}.'),
  'work.late': entry(['due'], 'It was to be handed in by {due}. Late work is marked too, and said to be late.'),
  'work.student': plain('Your name'),
  'work.number': plain('Your number, if you were given one'),
  'work.who-first': plain('Write your name first: the figures of this set follow from it.'),
  'work.who-changed': plain(
    'One draft or more were made for another name’s figure, and stay so. Go back to that name, or begin them again.',
  ),
  'work.trial': plain(
    'You see this set as a student does. What you write and draw here stands apart from every student’s work, and is gone when this tab is closed. The link for the class is the one on the desk, and not this page’s address.',
  ),
  'work.exercises': plain('Exercises'),
  'work.begin': plain('Begin'),
  'work.go-on': plain('Go on'),
  'work.begin-what': entry(['title'], 'Begin “{title}”'),
  'work.go-on-what': entry(['title'], 'Go on with “{title}”'),
  'work.fresh': plain('not begun'),
  'work.begun': entry(
    ['steps', 'checks'],
    '{steps, plural, one {one step} other {# steps}}, {checks, plural, =0 {not checked} one {checked once} =2 {checked twice} other {checked # times}}',
  ),
  'work.damaged': plain('What was kept of this draft cannot be read. Its own page shows it and lets you save it.'),
  'work.rules': plain('How it is done'),
  'work.rule-checks': entry(
    ['checks'],
    'A draft may be checked {checks, plural, one {once} =2 {twice} other {# times}}.',
  ),
  'work.rule-checks-any': plain('A draft may be checked as often as you like.'),
  'work.rule-verdict': plain('A check says which answers are right.'),
  'work.rule-direction': plain('A check says which answers are right, and how the others are off.'),
  'work.rule-place': plain('A check says how answers are off, and shows where they should be if you ask.'),
  'work.rule-hints': plain('Hints may be taken; your teacher sees which.'),
  'work.rule-no-hints': plain('There are no hints.'),
  'work.hand-in': plain('Save the hand-in'),
  'work.handed-in': entry(
    ['file', 'count', 'of'],
    '“{file}” is saved, with {count} of {of} exercises. Give it to your teacher. You can go on and hand in again.',
  ),
  'work.hand-in-none': plain('There is no draft yet to hand in.'),
  'work.hand-in-who': plain('Write your name, so that your teacher knows whose work it is.'),
  'work.kept': plain(
    'Drafts are kept in this browser as you draw. The saved hand-in goes with you to another: open it there.',
  ),
  'work.not-kept': plain('This browser keeps nothing. Finish in one sitting and save the hand-in before you leave.'),
};
