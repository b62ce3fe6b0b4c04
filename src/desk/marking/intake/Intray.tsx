import type { VNode } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Say } from '../../../table/say.ts';
import { spelled } from '../../../words/unseen.ts';
import type { MarkingDesk } from '../use-marking-desk.ts';
import { chosenFiles, droppedFiles } from './dropped-files.ts';

/** Where hand-ins are laid down: files or a folder, dropped or chosen. */
export function Intray({ desk, say }: { readonly desk: MarkingDesk; readonly say: Say }): VNode {
  const files = useRef<HTMLInputElement>(null);
  const folder = useRef<HTMLInputElement>(null);
  const [over, setOver] = useState(false);
  const [lost, setLost] = useState(false);
  const { progress } = desk;
  const choose = ({ currentTarget }: Event & { readonly currentTarget: HTMLInputElement }): void => {
    if (currentTarget.files) desk.takeIn(chosenFiles(currentTarget.files));
    // The same files can be chosen again.
    currentTarget.value = '';
  };
  // The attribute is in no standard, so no types know it; every browser does.
  const takeFolder = (input: HTMLInputElement | null): void => {
    folder.current = input;
    input?.setAttribute('webkitdirectory', '');
  };
  const drop = async (event: DragEvent): Promise<void> => {
    event.preventDefault();
    setOver(false);
    if (!event.dataTransfer) return;
    try {
      desk.takeIn(await droppedFiles(event.dataTransfer.items));
      setLost(false);
    } catch {
      setLost(true);
    }
  };
  return (
    <section
      class="intray"
      aria-label={say('mark.intray')}
      data-over={over}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <p>
        {desk.held.set === null ? say('mark.drop') : say('mark.drop-more', { title: spelled(desk.held.set.title) })}
      </p>
      <div class="ends">
        <button type="button" class="button button--first" data-do="choose" onClick={() => files.current?.click()}>
          {say('mark.choose')}
        </button>
        <button type="button" class="button" data-do="choose-folder" onClick={() => folder.current?.click()}>
          {say('mark.choose-folder')}
        </button>
        <input
          ref={files}
          class="unseen"
          type="file"
          multiple
          tabIndex={-1}
          aria-label={say('mark.choose')}
          onChange={choose}
        />
        <input
          ref={takeFolder}
          class="unseen"
          type="file"
          tabIndex={-1}
          aria-label={say('mark.choose-folder')}
          onChange={choose}
        />
      </div>
      <div class="intray-progress" role="status">
        {progress === null ? null : (
          <>
            <progress aria-label={say('mark.progress')} value={progress.done} max={Math.max(1, progress.of)} />{' '}
            <span>{say('mark.so-far', { count: desk.held.taken.length })}</span>{' '}
            <button type="button" class="button" data-do="cancel" onClick={desk.cancel}>
              {say('mark.cancel')}
            </button>
          </>
        )}
        {lost ? <p class="trouble">{say('mark.lost')}</p> : null}
        {desk.failed ? <p class="trouble">{say('mark.failed')}</p> : null}
      </div>
    </section>
  );
}
