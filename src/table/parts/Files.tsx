import type { VNode } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { FilesOnTable } from '../files-of.ts';
import { KeptNote } from './KeptNote.tsx';
import { OpenFile } from './OpenFile.tsx';

/** Saving to a file, opening one, handing in. */
export function Files({ student, keeping, say, onStudent, onSave, onHandIn, onOpen }: FilesOnTable): VNode {
  const [note, setNote] = useState<string | null>(null);
  const name = useRef<HTMLInputElement>(null);
  const handIn = (): void => {
    if (student.trim() !== '') {
      setNote(say('table.handed-in', { file: onHandIn() }));
      return;
    }
    setNote(say('table.student-needed'));
    name.current?.focus();
  };
  return (
    <section class="files" aria-labelledby="files-title">
      <h2 id="files-title">{say('table.files')}</h2>
      <KeptNote keeping={keeping} say={say} />
      <label class="field">
        <span>{say('table.student')}</span>
        <input
          ref={name}
          type="text"
          name="student"
          autocomplete="name"
          maxLength={200}
          value={student}
          onInput={(event) => onStudent(event.currentTarget.value)}
        />
      </label>
      <FilesEnds {...{ say, onSave, onOpen }} onHandIn={handIn} onSaid={setNote} />
      <p class="files-note" role="status">
        {note}
      </p>
    </section>
  );
}

interface FilesEndsProps extends Pick<FilesOnTable, 'say' | 'onSave' | 'onOpen'> {
  readonly onHandIn: () => void;
  readonly onSaid: (note: string) => void;
}

function FilesEnds({ say, onSave, onOpen, onHandIn, onSaid }: FilesEndsProps): VNode {
  return (
    <div class="files-ends">
      <button type="button" class="button button--first" data-do="hand-in" onClick={onHandIn}>
        {say('table.hand-in')}
      </button>
      <button
        type="button"
        class="button"
        data-do="save"
        onClick={() => onSaid(say('table.saved', { file: onSave() }))}
      >
        {say('table.save')}
      </button>
      <OpenFile
        says={say('table.open')}
        accept=".json,application/json"
        class="button"
        does="open"
        onText={(text) => onSaid(onOpen(text))}
        onUnread={() => onSaid(say('table.open-unread'))}
      />
    </div>
  );
}
