import type { VNode } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { fileNameOf } from '../../exchange/file-name.ts';
import { setLink } from '../../exchange/set-link.ts';
import { writeSet } from '../../exchange/write-set.ts';
import { download } from '../../table/download.ts';
import { OpenFile } from '../../table/parts/OpenFile.tsx';
import type { Say } from '../../table/say.ts';
import { isHereOnly } from './here-only.ts';
import type { Sheet } from './sheet.ts';

interface HandOutProps {
  readonly sheet: Sheet;
  /** Its link; null before the page is awake, or where it would be too long. */
  readonly address: string | null;
  readonly say: Say;
  /** Reads the text of a set's file; says what came of it. */
  readonly onOpen: (text: string) => string;
  readonly onClear: () => void;
}

/** What becomes of the set: a file, a link, a printed sheet; and sets opened again. */
export function HandOut({ sheet, address, say, onOpen, onClear }: HandOutProps): VNode {
  const [note, setNote] = useState<string | null>(null);
  const [sure, setSure] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const link = setLink(sheet);
  const ready = sheet.exercises.length > 0 && sheet.title.trim() !== '';
  const save = (): void => {
    const file = fileNameOf([sheet.title], 'set.json');
    download(file, writeSet(sheet));
    setNote(say('desk.saved-set', { file }));
  };
  const copy = async (text: string): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      setNote(say('desk.link-copied'));
    } catch {
      field.current?.select();
      setNote(say('desk.link-select'));
    }
  };
  const clear = (): void => {
    setNote(sure ? null : say('desk.new-sure'));
    if (sure) onClear();
    setSure(!sure);
  };
  return (
    <section class="desk-out" aria-labelledby="desk-out">
      <h2 id="desk-out">{say('desk.hand-out')}</h2>
      {ready ? null : <p class="desk-note">{say('desk.needs-exercise')}</p>}
      <div class="ends">
        <button type="button" class="button button--first" data-do="save-set" disabled={!ready} onClick={save}>
          {say('desk.save-set')}
        </button>
        <button
          type="button"
          class="button"
          data-do="copy-link"
          disabled={!ready || address === null}
          onClick={() => copy(address ?? '')}
        >
          {say('desk.copy-link')}
        </button>
        {ready && address !== null ? (
          <a class="button" href={address} target="_blank" rel="noopener">
            {say('desk.as-student')}
          </a>
        ) : null}
        <button type="button" class="button" disabled={!ready} onClick={() => window.print()}>
          {say('desk.print')}
        </button>
      </div>
      {ready && address !== null ? (
        <label class="field desk-link">
          <span>{say('desk.link')}</span>
          <input ref={field} type="text" readOnly name="link" value={address} />
        </label>
      ) : null}
      {ready && address !== null && isHereOnly(address) ? <p class="desk-note">{say('desk.link-here')}</p> : null}
      {ready && !link.ok ? <p class="desk-note">{say.message(link.message)}</p> : null}
      <p class="desk-said" role="status">
        {note}
      </p>
      <div class="ends">
        <OpenFile
          says={say('desk.open-set')}
          accept=".json,application/json"
          class="button button--quiet"
          does="open-set"
          onText={(text) => setNote(onOpen(text))}
        />
        <button type="button" class="button button--quiet" data-do="new-set" onClick={clear}>
          {say('desk.new-set')}
        </button>
      </div>
    </section>
  );
}
