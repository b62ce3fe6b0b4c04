import type { VNode } from 'preact';
import { type OwnMark, REASON_LENGTH } from '../../../exchange/notes/notes.ts';
import type { Say } from '../../../table/say.ts';
import { type OwnMarkInHand, useOwnMark } from './use-own-mark.ts';

interface OwnMarkFormProps {
  /** The mark that was given before; null where the grader's counts. */
  readonly before: OwnMark | null;
  readonly of: number;
  readonly say: Say;
  readonly onGive: (mark: OwnMark) => void;
  readonly onLeave: () => void;
}

/** Where a teacher gives another mark, with a reason. Escape leaves it, and the work stays open. */
export function OwnMarkForm({ before, of, say, onGive, onLeave }: OwnMarkFormProps): VNode {
  const inHand = useOwnMark(before, of, onGive);
  return (
    <form
      class="own-mark-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        inHand.give();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        onLeave();
      }}
    >
      <Fields inHand={inHand} of={of} say={say} />
      {inHand.trouble ? (
        <p class="trouble" role="alert">
          {say.message(inHand.trouble)}
        </p>
      ) : null}
      <div class="ends">
        <button type="submit" class="button button--first" data-do="give-mark">
          {say('mark.own-give')}
        </button>
        <button type="button" class="button" data-do="leave-mark" onClick={onLeave}>
          {say('mark.own-leave')}
        </button>
      </div>
    </form>
  );
}

interface FieldsProps extends Pick<OwnMarkFormProps, 'of' | 'say'> {
  readonly inHand: OwnMarkInHand;
}

function Fields({ inHand, of, say }: FieldsProps): VNode {
  return (
    <>
      <label class="field own-mark-marks">
        <span>{say('mark.own-marks', { of: Math.round(of * 100) / 100 })}</span>
        <input
          ref={inHand.first}
          type="text"
          inputMode="decimal"
          name="own-marks"
          autoComplete="off"
          value={inHand.marks}
          onInput={({ currentTarget }) => inHand.setMarks(currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>{say('mark.own-reason')}</span>
        <textarea
          ref={inHand.why}
          name="own-reason"
          rows={2}
          maxLength={REASON_LENGTH}
          value={inHand.reason}
          onInput={({ currentTarget }) => inHand.setReason(currentTarget.value)}
        />
      </label>
    </>
  );
}
