import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { fileNameOf } from '../../exchange/file-name.ts';
import { LINK_PREFIX, setLink } from '../../exchange/set-link.ts';
import { writeSet } from '../../exchange/write-set.ts';
import { download } from '../../table/download.ts';
import { OpenFile } from '../../table/parts/OpenFile.tsx';
import type { Say } from '../../table/say.ts';
import { TRIAL_PREFIX } from '../../table/store/own-storage.ts';
import { useSure } from '../use-sure.ts';
import { LinkField } from './LinkField.tsx';
import type { Sheet } from './sheet.ts';
import { useCopy } from './use-copy.ts';

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
  const { button, armed, press } = useSure(onClear);
  const link = setLink(sheet);
  const ready = sheet.exercises.length > 0 && sheet.title.trim() !== '';
  return (
    <section class="desk-out" aria-labelledby="desk-out">
      <h2 id="desk-out">{say('desk.hand-out')}</h2>
      {ready ? null : <p class="desk-note">{say('desk.needs-exercise')}</p>}
      <Ways sheet={sheet} address={address} ready={ready} say={say} onSaid={setNote} />
      {ready && !link.ok ? <p class="desk-note">{say.message(link.message)}</p> : null}
      <p class="desk-said" role="status">
        {armed ? say('desk.new-sure') : note}
      </p>
      <div class="ends">
        <OpenFile
          says={say('desk.open-set')}
          accept=".json,application/json"
          class="button button--quiet"
          does="open-set"
          onText={(text) => setNote(onOpen(text))}
          onUnread={() => setNote(say('table.open-unread'))}
        />
        <button ref={button} type="button" class="button button--quiet" data-do="new-set" onClick={press}>
          {say('desk.new-set')}
        </button>
      </div>
    </section>
  );
}

interface WaysProps extends Pick<HandOutProps, 'sheet' | 'address' | 'say'> {
  readonly ready: boolean;
  /** Told what came of it. */
  readonly onSaid: (said: string) => void;
}

/** The ways in which a set reaches its class, and how it looks there. */
function Ways({ sheet, address, ready, say, onSaid }: WaysProps): VNode {
  const open = ready ? address : null;
  const { field, copy } = useCopy((copied) => onSaid(say(copied ? 'desk.link-copied' : 'desk.link-select')));
  const save = (): void => {
    const file = fileNameOf([sheet.title], 'set.json');
    download(file, writeSet(sheet));
    onSaid(say('desk.saved-set', { file }));
  };
  return (
    <>
      <div class="ends">
        <button type="button" class="button button--first" data-do="save-set" disabled={!ready} onClick={save}>
          {say('desk.save-set')}
        </button>
        <button
          type="button"
          class="button"
          data-do="copy-link"
          disabled={open === null}
          onClick={() => copy(open ?? '')}
        >
          {say('desk.copy-link')}
        </button>
        {open === null ? null : (
          <a class="button" data-do="as-student" href={asStudent(open)} target="_blank" rel="noopener">
            {say('desk.as-student')}
          </a>
        )}
        <button type="button" class="button" disabled={!ready} onClick={() => window.print()}>
          {say('desk.print')}
        </button>
      </div>
      {open === null ? null : <LinkField address={open} field={field} say={say} />}
    </>
  );
}

/** The address under which a set is only looked at. */
function asStudent(address: string): string {
  return address.replace(`#${LINK_PREFIX}`, `#${TRIAL_PREFIX}`);
}
