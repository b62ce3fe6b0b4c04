import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { isRecord } from '../../drafting/record.ts';
import { fileNameOf } from '../../exchange/file-name.ts';
import { readJson } from '../../exchange/json.ts';
import { download } from '../../table/download.ts';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';
import { useSure } from '../use-sure.ts';
import type { UnreadSheet } from './sheet.ts';

interface UnreadSetProps {
  readonly unread: UnreadSheet;
  readonly say: Say;
  /** Begins another set in its place. */
  readonly onBegin: () => void;
}

/** A set that was kept and cannot be read any more: it is offered as it is, and nothing is kept over it unasked. */
export function UnreadSet({ unread: { text, why }, say, onBegin }: UnreadSetProps): VNode {
  const [note, setNote] = useState<string | null>(null);
  const { button, armed, press } = useSure(onBegin);
  const save = (): void => {
    const file = fileNameOf([titleIn(text) || say('desk.name-start')], 'set.json');
    download(file, text);
    setNote(say('desk.unread-saved', { file }));
  };
  return (
    <div class="notice" data-unread="set">
      <p role="alert">{spelled(say('desk.unread', { why: { said: why } }))}</p>
      <div class="ends">
        <button type="button" class="button button--first" data-do="save-unread" onClick={save}>
          {say('desk.unread-save')}
        </button>
        <button ref={button} type="button" class="button button--quiet" data-do="new-set" onClick={press}>
          {say('desk.new-set')}
        </button>
      </div>
      <p role="status">{armed ? say('desk.unread-sure') : note}</p>
    </div>
  );
}

/** The title that it has, as far as it can be read at all. */
function titleIn(text: string): string {
  const read = readJson(text);
  const title = read.ok && isRecord(read.json) ? read.json['title'] : '';
  return typeof title === 'string' ? title : '';
}
