import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import type { Gradebook } from '../../exchange/class/gradebook.ts';
import { gradebookCsv, UTF8_MARK } from '../../exchange/class/gradebook-csv.ts';
import { fileNameOf } from '../../exchange/file-name.ts';
import { download } from '../../table/download.ts';
import type { Say } from '../../table/say.ts';
import { useSure } from '../use-sure.ts';
import type { Held } from './intake/piles.ts';
import { SaveMarking } from './SaveMarking.tsx';

interface BookEndsProps {
  readonly held: Held;
  readonly book: Gradebook;
  readonly say: Say;
  readonly onSheets: () => void;
  readonly onClear: () => void;
}

/** What becomes of the gradebook: a table for other programs, sheets for the students, all the work as a file; or the desk is cleared. */
export function BookEnds({ held, book, say, onSheets, onClear }: BookEndsProps): VNode {
  const [note, setNote] = useState<string | null>(null);
  const { button, armed, press } = useSure(onClear);
  const saveCsv = (): void => {
    const file = fileNameOf([held.set?.title ?? say('mark.file')], 'csv');
    download(file, `${UTF8_MARK}${gradebookCsv(book, say.reader)}`, 'text/csv');
    setNote(say('mark.csv-saved', { file }));
  };
  return (
    <>
      <div class="ends">
        <button type="button" class="button button--first" data-do="csv" onClick={saveCsv}>
          {say('mark.csv')}
        </button>
        <button type="button" class="button" data-do="sheets" onClick={onSheets}>
          {say('feedback.open')}
        </button>
        <SaveMarking held={held} say={say} onSaid={setNote} />
        <button ref={button} type="button" class="button button--quiet" data-do="clear" onClick={press}>
          {say('mark.clear')}
        </button>
      </div>
      <p role="status">{armed ? say('mark.clear-sure') : note}</p>
    </>
  );
}
