import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { fileNameOf } from '../../exchange/file-name.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import type { Student } from '../../exchange/student.ts';
import { download } from '../../table/download.ts';
import { OpenFile } from '../../table/parts/OpenFile.tsx';
import type { Say } from '../../table/say.ts';
import { local } from '../../table/store/own-storage.ts';
import { spelled } from '../../words/unseen.ts';
import { type FileTaken, takeFile } from './take-file.ts';
import type { Work } from './use-work.ts';
import { handInOf } from './working-on.ts';

interface EndsProps {
  readonly work: Work;
  readonly names: readonly string[];
  readonly say: Say;
}

/** What ends the work and what begins it: saving the hand-in, and opening a set or a hand-in. */
export function Ends({ work, names, say }: EndsProps): VNode {
  const { set, student } = work;
  const { note, setNote, open, putBack } = useOpening({ work, names, say });
  return (
    <section class="work-ends">
      <div class="ends">
        {set === null ? null : (
          <button
            type="button"
            class="button button--first"
            data-do="hand-in-set"
            onClick={() => setNote(saveHandIn(set, student, say))}
          >
            {say('work.hand-in')}
          </button>
        )}
        <OpenFile
          says={say('work.open')}
          accept=".json,.ndjson,application/json"
          class="button"
          does="open"
          onText={open}
          onUnread={() => setNote(say('table.open-unread'))}
        />
        {putBack === null ? null : (
          <button type="button" class="button" data-do="put-back" onClick={putBack}>
            {say('work.put-back')}
          </button>
        )}
      </div>
      <p role="status">{note}</p>
      {work.trial ? null : <p class="small">{say(work.kept === 'kept' ? 'work.kept' : 'work.not-kept')}</p>}
    </section>
  );
}

interface Opening {
  /** What came of what was pressed last. */
  readonly note: string | null;
  readonly setNote: (note: string) => void;
  readonly open: (text: string) => void;
  /** Lays drafts here again whose place those of a file took; null where there are none. */
  readonly putBack: (() => void) | null;
}

/** Opens files, and keeps the way back from the last that took the place of drafts. */
function useOpening({ work, names, say }: EndsProps): Opening {
  const [note, setNote] = useState<string | null>(null);
  const [way, setWay] = useState<FileTaken['putBack']>(null);
  const open = (text: string): void => {
    const taken = takeFile(text, names, work);
    setNote(spelled(say.message(taken.says)));
    if (taken.putBack !== null) setWay(() => taken.putBack);
  };
  const putBack = (): void => {
    way?.();
    setNote(say('work.was-put-back'));
    setWay(null);
  };
  return { note, setNote, open, putBack: way && putBack };
}

/** Saves the hand-in as a file; says what came of it. */
function saveHandIn(set: ProblemSet, student: Student, say: Say): string {
  if (student.student.trim() === '') return say('work.hand-in-who');
  const { text, count } = handInOf(local, set, student, new Date().toISOString());
  if (count === 0) return say('work.hand-in-none');
  const file = fileNameOf([student.student, set.title], 'hand-in.ndjson');
  download(file, text);
  return say('work.handed-in', { file, count, of: set.exercises.length });
}
