import type { VNode } from 'preact';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';
import { BookEnds } from './BookEnds.tsx';
import { Book } from './book/Book.tsx';
import { ClassView } from './class/ClassView.tsx';
import { Untaken } from './intake/Untaken.tsx';
import type { DeskKeeping } from './keeping/use-keeping.ts';
import { Loose } from './piece/Loose.tsx';
import { ALL, choiceOf } from './sheets/choice.ts';
import { Sheets } from './sheets/Sheets.tsx';
import { useSheetsOpen } from './sheets/use-sheets-open.ts';
import { type MarkedDesk, useMarked } from './use-marked.ts';
import type { MarkingDesk } from './use-marking-desk.ts';

interface MarkedProps {
  readonly desk: MarkingDesk;
  readonly kept: DeskKeeping;
  readonly titles: ReadonlyMap<string, string>;
  /** Where the exercises lie, whole, from the page's own address. */
  readonly exercises: string;
  readonly say: Say;
}

/** Everything that is made of the work on the desk: the gradebook, the sheets, what could not be read, and the class. */
export function Marked({ desk, kept, titles, exercises, say }: MarkedProps): VNode {
  const { held, progress } = desk;
  const { set, taken, notes } = held;
  const marked = useMarked(desk, exercises);
  const { book, loose, inHand } = marked;
  const sheets = useSheetsOpen();
  const shared = { book, inHand, set, titles, notes, say };
  const clear = async (): Promise<void> => {
    desk.clear();
    await kept.putAway();
  };
  return (
    <>
      <section aria-labelledby="mark-book">
        <h2 id="mark-book" tabIndex={-1}>
          {set === null ? say('mark.book') : say('mark.book-of', { title: spelled(set.title) })}
        </h2>
        <p class="small">{counted(desk, marked, say)}</p>
        <Book {...shared} onWrite={desk.write} onSheet={(student) => sheets.open(choiceOf(student))} />
        <BookEnds held={held} book={book} say={say} onSheets={() => sheets.open(ALL)} onClear={clear} />
      </section>
      {sheets.whose === null ? null : (
        <Sheets key={sheets.times} {...shared} first={sheets.whose} onClose={sheets.close} />
      )}
      <Untaken taken={taken} say={say} onGoOn={progress ? null : desk.goOn} onLeaveOut={desk.leaveOut} />
      <Loose loose={loose} titles={titles} say={say} pieceOf={inHand.work.pieceOf} onWrite={desk.write} />
      {/* While more is coming in, the class is not yet what it will be. */}
      {progress ? null : <ClassView inHand={inHand} order={book.exercises} set={set} titles={titles} say={say} />}
    </>
  );
}

/** How much lies there, and what of it counts once only or differs. */
function counted({ held: { again, clashes } }: MarkingDesk, { book, sound }: MarkedDesk, say: Say): string {
  return [
    say('mark.counted', { students: book.lines.length, work: sound.length - book.repeated }),
    ...(again > 0 ? [say('mark.again', { again })] : []),
    ...(clashes > 0 ? [say('mark.clashed', { clashes })] : []),
  ].join(' ');
}
