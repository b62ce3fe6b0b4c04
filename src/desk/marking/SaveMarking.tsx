import type { VNode } from 'preact';
import { fileNameOf } from '../../exchange/file-name.ts';
import { download } from '../../table/download.ts';
import type { Say } from '../../table/say.ts';
import { filedText } from './filed.ts';
import type { Held } from './intake/piles.ts';

interface SaveMarkingProps {
  readonly held: Held;
  readonly say: Say;
  /** Told what came of it. */
  readonly onSaid: (said: string) => void;
}

/** Saves all the work on the desk as one file that opens again. */
export function SaveMarking({ held, say, onSaid }: SaveMarkingProps): VNode {
  const save = (): void => {
    const text = filedText(held, new Date().toISOString());
    if (text === null) {
      onSaid(say('mark.too-much'));
      return;
    }
    const file = fileNameOf([held.set?.title ?? say('mark.file')], 'marking.json');
    download(file, text);
    onSaid(say('mark.saved', { file }));
  };
  return (
    <button type="button" class="button" data-do="save-marking" onClick={save}>
      {say('mark.save')}
    </button>
  );
}
