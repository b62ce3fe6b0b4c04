import type { VNode } from 'preact';
import type { Say } from '../../../table/say.ts';
import { spelled } from '../../../words/unseen.ts';
import type { MarkingDesk } from '../use-marking-desk.ts';
import { type Tray, useTray } from './use-tray.ts';

interface IntrayProps {
  readonly desk: MarkingDesk;
  readonly say: Say;
}

/** Where hand-ins are laid down: files or a folder, dropped or chosen. */
export function Intray({ desk, say }: IntrayProps): VNode {
  const tray = useTray(desk.takeIn);
  const { set } = desk.held;
  return (
    <section class="intray" aria-label={say('mark.intray')} data-over={tray.over} {...tray.listen}>
      <p>{set === null ? say('mark.drop') : say('mark.drop-more', { title: spelled(set.title) })}</p>
      <Choosing tray={tray} say={say} />
      <div class="intray-progress" role="status">
        <HowFar desk={desk} say={say} />
        {tray.lost ? <p class="trouble">{say('mark.lost')}</p> : null}
        {desk.failed ? <p class="trouble">{say('mark.failed')}</p> : null}
      </div>
    </section>
  );
}

/** What is pressed to choose files or a folder. */
function Choosing({ tray, say }: { readonly tray: Tray; readonly say: Say }): VNode {
  const { awake, files, folder, choose } = tray;
  return (
    <div class="ends">
      <button
        type="button"
        class="button button--first"
        data-do="choose"
        disabled={!awake}
        onClick={() => files.current?.click()}
      >
        {say('mark.choose')}
      </button>
      <button
        type="button"
        class="button"
        data-do="choose-folder"
        disabled={!awake}
        onClick={() => folder.current?.click()}
      >
        {say('mark.choose-folder')}
      </button>
      <Chooser input={files} says={say('mark.choose')} multiple choose={choose} />
      <Chooser input={folder} says={say('mark.choose-folder')} choose={choose} />
    </div>
  );
}

interface ChooserProps extends Pick<Tray, 'choose'> {
  readonly input: Tray['files'];
  readonly says: string;
  readonly multiple?: boolean;
}

/** The browser's own chooser, which the buttons open. */
function Chooser({ input, says, multiple, choose }: ChooserProps): VNode {
  return (
    <input
      ref={input}
      class="unseen"
      type="file"
      multiple={multiple}
      tabIndex={-1}
      aria-label={says}
      onChange={choose}
    />
  );
}

/** How far marking has come, and what stops it. */
function HowFar({ desk, say }: IntrayProps): VNode | null {
  const { progress, held, cancel } = desk;
  if (progress === null) return null;
  return (
    <>
      <progress aria-label={say('mark.progress')} value={progress.done} max={Math.max(1, progress.of)} />{' '}
      <span>{say('mark.so-far', { count: held.taken.length })}</span>{' '}
      <button type="button" class="button" data-do="cancel" onClick={cancel}>
        {say('mark.cancel')}
      </button>
    </>
  );
}
