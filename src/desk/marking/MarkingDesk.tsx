import type { VNode } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { gradebookOf } from '../../exchange/class/gradebook.ts';
import { gradebookCsv } from '../../exchange/class/gradebook-csv.ts';
import { fileNameOf } from '../../exchange/file-name.ts';
import { draftKey } from '../../exchange/notes/draft-key.ts';
import { looseNotes, type NotedPiece } from '../../exchange/notes/loose-notes.ts';
import { notedEntry } from '../../exchange/notes/noted-marks.ts';
import { UNTOUCHED } from '../../exchange/notes/notes.ts';
import { download } from '../../table/download.ts';
import { type Say, sayFor } from '../../table/say.ts';
import { useReader } from '../../table/use-reader.ts';
import { spelled } from '../../words/unseen.ts';
import type { ExerciseCard } from '../setting/exercise-card.ts';
import { Book, type Sound } from './book/Book.tsx';
import { ClassView } from './class/ClassView.tsx';
import { Intray } from './intake/Intray.tsx';
import type { Taken } from './intake/intake.ts';
import { KeepingNotice } from './keeping/KeepingNotice.tsx';
import { type DeskKeeping, useKeeping } from './keeping/use-keeping.ts';
import { isBare } from './keeping/work-of.ts';
import { Loose } from './piece/Loose.tsx';
import './marking.css';
import './piece/own-marks.css';
import { useClass } from './class/use-class.ts';
import { Untaken } from './intake/Untaken.tsx';
import { SaveMarking } from './SaveMarking.tsx';
import { Sheets } from './sheets/Sheets.tsx';
import { type MarkingDesk as Desk, useMarkingDesk } from './use-marking-desk.ts';

interface MarkingDeskProps {
  readonly cards: readonly ExerciseCard[];
  /** Where the exercises lie, whole, from the page's own address. */
  readonly exercises: string;
  readonly language: string;
}

/** The desk on which hand-ins are marked: what came in, the gradebook, and what the class has misunderstood. */
export function MarkingDesk({ cards, exercises, language }: MarkingDeskProps): VNode {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const titles = useMemo(() => new Map(cards.map(({ id, title }) => [id, title])), [cards]);
  const names = useMemo(() => cards.map(({ id }) => id), [cards]);
  const desk = useMarkingDesk(exercises);
  const kept = useKeeping(desk, names);
  return (
    <div class="marking">
      <Intray desk={desk} say={say} />
      <KeepingNotice kept={kept} bare={isBare(desk.held)} say={say} />
      {desk.held.taken.length === 0 ? null : (
        <Marked desk={desk} kept={kept} titles={titles} exercises={exercises} say={say} />
      )}
    </div>
  );
}

function notedPiece(taken: Taken): readonly NotedPiece[] {
  if (taken.ok) return [{ handIn: taken.handIn, checks: taken.row.checks }];
  return taken.handIn === null ? [] : [{ handIn: taken.handIn, checks: null }];
}

interface MarkedProps {
  readonly desk: Desk;
  readonly kept: DeskKeeping;
  readonly titles: ReadonlyMap<string, string>;
  readonly exercises: string;
  readonly say: Say;
}

function Marked({ desk, kept, titles, exercises, say }: MarkedProps): VNode {
  const { held, progress } = desk;
  const { set, taken, again, notes, clashes } = held;
  const sound = useMemo(() => taken.filter((one): one is Sound => one.ok), [taken]);
  const book = useMemo(
    () =>
      gradebookOf(
        sound.map(({ entry, row, handIn }) => notedEntry(entry, row, notes.pieces.get(draftKey(handIn)) ?? UNTOUCHED)),
        set,
      ),
    [sound, set, notes.pieces],
  );
  const loose = useMemo(() => (progress ? [] : looseNotes(taken.flatMap(notedPiece), notes)), [taken, notes, progress]);
  const inHand = useClass(sound, exercises);
  const [sheets, setSheets] = useState(false);
  const [note, setNote] = useState<string | null>(null);
  const [sure, setSure] = useState(false);
  const clear = async (): Promise<void> => {
    setNote(sure ? null : say('mark.clear-sure'));
    setSure(!sure);
    if (!sure) return;
    desk.clear();
    await kept.putAway();
  };
  const saveCsv = (): void => {
    const file = fileNameOf([set?.title ?? say('mark.file')], 'csv');
    download(file, gradebookCsv(book, say.reader), 'text/csv');
    setNote(say('mark.csv-saved', { file }));
  };
  const counted = [
    say('mark.counted', { students: book.lines.length, work: sound.length - book.repeated }),
    ...(again > 0 ? [say('mark.again', { again })] : []),
    ...(clashes > 0 ? [say('mark.clashed', { clashes })] : []),
  ];
  return (
    <>
      <section aria-labelledby="mark-book">
        <h2 id="mark-book">{set === null ? say('mark.book') : say('mark.book-of', { title: spelled(set.title) })}</h2>
        <p class="small">{counted.join(' ')}</p>
        <Book book={book} inHand={inHand} set={set} titles={titles} notes={notes} onWrite={desk.write} say={say} />
        <div class="ends">
          <button type="button" class="button button--first" data-do="csv" onClick={saveCsv}>
            {say('mark.csv')}
          </button>
          <button type="button" class="button" data-do="sheets" onClick={() => setSheets(true)}>
            {say('feedback.open')}
          </button>
          <SaveMarking held={held} say={say} onSaid={setNote} />
          <button type="button" class="button button--quiet" data-do="clear" onClick={clear}>
            {say('mark.clear')}
          </button>
        </div>
        <p role="status">{note}</p>
      </section>
      {sheets ? (
        <Sheets
          book={book}
          inHand={inHand}
          set={set}
          titles={titles}
          notes={notes}
          say={say}
          onClose={() => setSheets(false)}
        />
      ) : null}
      <Untaken taken={taken} say={say} onGoOn={progress ? null : desk.goOn} />
      <Loose loose={loose} titles={titles} say={say} pieceOf={inHand.work.pieceOf} onWrite={desk.write} />
      {/* While more is coming in, the class is not yet what it will be. */}
      {progress ? null : <ClassView inHand={inHand} order={book.exercises} titles={titles} say={say} />}
    </>
  );
}
