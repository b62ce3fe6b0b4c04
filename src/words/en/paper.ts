import { entry, plain } from '../entry.ts';

/** A draft on paper, at its full size. */
export const paper = {
  'paper.title': plain('Print at full size'),
  'paper.lead': plain(
    'The draft as it lies on the table, to walk with a tape, to lay on a form or to cut out. No seam allowance is added.',
  ),
  'paper.failed': plain(
    'What lays the sheets out could not be fetched. Close this and open it again once the network is back.',
  ),
  'paper.paper': plain('Paper'),
  'paper.a4': plain('A4'),
  'paper.a3': plain('A3'),
  'paper.a0': plain('A0, for a wide printer'),
  'paper.letter': plain('Letter, 8 1/2 by 11 in'),
  'paper.tabloid': plain('Tabloid, 11 by 17 in'),
  'paper.helps': plain('With construction lines'),
  'paper.plan': entry(['count'], 'How the draft lies on {count, plural, one {one sheet} other {# sheets}} of paper.'),
  'paper.how': entry(
    ['count'],
    'Print without scaling, at 100 %, and measure both scales on a sheet before you go on.{count, plural, one {} other { Cut each sheet along its frame on the right and below, and lay it on the margin of the next so that the halves of the diamonds meet.}}',
  ),
  'paper.care': plain(
    'Scissors are sharp: cut away from the other hand and lay them down closed. The rules of your room and the teacher in it come first.',
  ),
  'paper.print': entry(['count'], 'Print {count, plural, one {the sheet} other {# sheets}}'),
  'paper.measure': entry(['length'], '{length} long? If not, print again at 100 %.'),
  'paper.says': entry(['what', 'code', 'number', 'of'], '{code}, sheet {number} of {of} · {what} · no seam allowance'),
};
