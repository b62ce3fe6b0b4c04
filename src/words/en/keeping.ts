import { entry, plain } from '../entry.ts';

/** Files, and what this browser keeps of a draft. */
export const keeping = {
  'table.files': plain('Keep and hand in'),
  'table.save': plain('Save to a file'),
  'table.open': plain('Open a file'),
  'table.hand-in': plain('Hand in'),
  'table.student': plain('Your name, as your teacher knows it'),
  'table.student-needed': plain('Write your name first, so that your teacher knows whose draft it is.'),
  'table.handed-in': entry(['file'], 'Saved as {file}. Give this file to your teacher.'),
  'table.saved': entry(['file'], 'Saved as {file}.'),
  'table.open-failed': entry(['why'], 'This file could not be opened. {why}'),
  'table.open-unread': plain(
    'The browser may not read this file, or it is no longer where it was. Nothing was changed.',
  ),
  'table.open-other': entry(['exercise'], 'This file is a draft for another exercise: {exercise}.'),
  'table.kept': plain('Kept in this browser after every step.'),
  'table.kept-trial': plain('Kept in this tab alone while you look, and gone when it is closed.'),
  'table.not-kept-full': plain(
    'Your draft is not being kept: there is no room left for it in this browser. Save it to a file before you leave.',
  ),
  'table.not-kept-forbidden': plain(
    'Your draft is not being kept: this browser does not let the page keep anything. Save it to a file before you leave.',
  ),
  'table.damaged': plain(
    'The draft kept in this browser is damaged and cannot be read. Save the raw file if you want it looked at, then start clean.',
  ),
  'table.damaged-save': plain('Save the raw file'),
  'table.damaged-start': plain('Start clean'),
  'table.elsewhere': plain(
    'This draft was changed in another tab or window meanwhile. Until you choose, what you draw here is not kept.',
  ),
  'table.elsewhere-take': plain('Lay the other one here'),
  'table.elsewhere-keep': plain('Keep the one here'),
};
