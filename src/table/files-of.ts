import { writeHandIn } from '../exchange/write-hand-in.ts';
import type { Exercise } from '../grader/exercise.ts';
import { download } from './download.ts';
import type { Say } from './say.ts';
import { fileName, openDraft } from './store/files.ts';
import type { Keeping } from './use-kept.ts';
import type { RecordOnTable } from './use-record.ts';

export interface FilesOnTable {
  readonly student: string;
  readonly keeping: Keeping;
  readonly say: Say;
  readonly onStudent: (name: string) => void;
  /** Both say the name of the file they made. */
  readonly onSave: () => string;
  readonly onHandIn: () => string;
  /** What came of it, in words. */
  readonly onOpen: (text: string) => string;
}

/** The draft as files: saved, handed in, opened. All three are the same form. */
export function filesOf(exercise: Exercise, record: RecordOnTable, say: Say): FilesOnTable {
  const save = (suffix: string): string => {
    const draft = record.handIn(new Date().toISOString());
    const name = fileName(draft, suffix);
    download(name, writeHandIn(draft));
    return name;
  };
  return {
    student: record.student,
    keeping: record.keeping,
    say,
    onStudent: record.setStudent,
    onSave: () => save('draft.json'),
    onHandIn: () => save('hand-in.json'),
    onOpen: (text) => {
      const opened = openDraft(text, exercise);
      if (!opened.ok) return say.message(opened.message);
      record.takeUp({ handIn: opened.handIn, upTo: null, checked: false });
      return say('table.opened', { count: opened.handIn.steps.length });
    },
  };
}
