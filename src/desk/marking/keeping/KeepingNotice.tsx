import type { VNode } from 'preact';
import { fileNameOf } from '../../../exchange/file-name.ts';
import { download } from '../../../table/download.ts';
import type { Say } from '../../../table/say.ts';
import { momentText } from '../../../words/moment.ts';
import { spelled } from '../../../words/unseen.ts';
import { useSure } from '../../use-sure.ts';
import type { Summary } from './shelf.ts';
import type { DeskKeeping } from './use-keeping.ts';
import { isListAlone } from './work-of.ts';

interface KeepingNoticeProps {
  readonly kept: DeskKeeping;
  /** Whether anything lies on the desk. */
  readonly bare: boolean;
  readonly say: Say;
}

/** How keeping the work goes, and what the teacher has to say about it where something stands in the way. */
export function KeepingNotice({ kept, bare, say }: KeepingNoticeProps): VNode | null {
  const { keeping } = kept;
  switch (keeping.state) {
    case 'waiting':
      return null;
    case 'offered':
      // It is gone on with by itself.
      if (isListAlone(keeping.summary)) return null;
      return <Offer kept={kept} summary={keeping.summary} say={say} />;
    case 'damaged':
      return <Damaged kept={kept} raw={keeping.raw} say={say} />;
    case 'elsewhere':
      return <Elsewhere kept={kept} say={say} />;
    case 'kept':
      return bare ? null : <p class="small">{say('mark.kept')}</p>;
    default:
      return bare ? null : (
        <p class="notice" role="alert">
          {say(`mark.not-kept-${keeping.state}`)}
        </p>
      );
  }
}

interface OfferProps {
  readonly kept: DeskKeeping;
  readonly summary: Summary | null;
  readonly say: Say;
}

/** Work of another day: gone on with, saved, or put away, which takes a second press. */
function Offer({ kept, summary, say }: OfferProps): VNode {
  const { button, armed, press } = useSure(kept.putAwayWork);
  const save = async (): Promise<void> => {
    const text = await kept.text();
    if (text !== null) download(fileNameOf([summary?.title || say('mark.file')], 'marking.json'), text);
  };
  return (
    <section class="notice" aria-label={say('mark.kept-what')} data-keeping="offered">
      <p>
        {spelled(offerWords(summary, say))} {say('mark.kept-wait')}
      </p>
      <div class="ends">
        <button type="button" class="button button--first" data-do="kept-go-on" onClick={kept.goOn}>
          {say('mark.kept-go-on')}
        </button>
        <button type="button" class="button" data-do="kept-save" onClick={save}>
          {say('mark.kept-save')}
        </button>
        <button ref={button} type="button" class="button button--quiet" data-do="kept-away" onClick={press}>
          {say('mark.kept-away')}
        </button>
      </div>
      <p role="status">{armed ? say('mark.kept-away-sure') : null}</p>
      {kept.failed ? <p class="trouble">{say('mark.failed')}</p> : null}
    </section>
  );
}

function offerWords(summary: Summary | null, say: Say): string {
  if (summary === null) return say('mark.kept-offer-unknown');
  const { title, students, pieces } = summary;
  const saved = momentText(summary.saved, say.reader.language);
  return title === ''
    ? say('mark.kept-offer-plain', { students, pieces, saved })
    : say('mark.kept-offer', { title, students, pieces, saved });
}

/** What was kept cannot be read: it is offered as it is, and nothing is thrown away unasked. */
function Damaged({ kept, raw, say }: { readonly kept: DeskKeeping; readonly raw: string; readonly say: Say }): VNode {
  return (
    <div class="notice" role="alert" data-keeping="damaged">
      <p>{say('mark.kept-damaged')}</p>
      <div class="ends">
        <button
          type="button"
          class="button"
          data-do="kept-raw"
          onClick={() => download('marking.damaged.txt', raw, 'text/plain')}
        >
          {say('mark.kept-damaged-save')}
        </button>
        <button type="button" class="button button--first" data-do="kept-clean" onClick={kept.putAway}>
          {say('mark.kept-damaged-start')}
        </button>
      </div>
    </div>
  );
}

/** Another tab has other work: the teacher says what is kept. */
function Elsewhere({ kept, say }: { readonly kept: DeskKeeping; readonly say: Say }): VNode {
  return (
    <div class="notice" role="alert" data-keeping="elsewhere">
      <p>{say('mark.kept-elsewhere')}</p>
      <div class="ends">
        <button type="button" class="button button--first" data-do="kept-together" onClick={kept.goOn}>
          {say('mark.kept-together')}
        </button>
        <button type="button" class="button" data-do="kept-take" onClick={kept.takeOther}>
          {say('mark.kept-take')}
        </button>
        <button type="button" class="button" data-do="kept-mine" onClick={kept.keepMine}>
          {say('mark.kept-mine')}
        </button>
      </div>
      {kept.failed ? <p class="trouble">{say('mark.failed')}</p> : null}
    </div>
  );
}
