import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { givenMark } from '../../../exchange/notes/given-mark.ts';
import { type OwnMark, REASON_LENGTH } from '../../../exchange/notes/notes.ts';
import type { Say } from '../../../table/say.ts';
import type { Message } from '../../../words/message.ts';

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
  const first = useRef<HTMLInputElement>(null);
  const why = useRef<HTMLTextAreaElement>(null);
  const [marks, setMarks] = useState(before === null ? '' : String(before.marks));
  const [reason, setReason] = useState(before?.reason ?? '');
  const [trouble, setTrouble] = useState<Message | null>(null);
  useEffect(() => first.current?.focus(), []);
  // Whoever pressed Enter goes on writing where something is missing.
  const refuse = (missing: Message): void => {
    setTrouble(missing);
    const wantsReason = 'key' in missing && missing.key === 'mark.own-no-reason';
    (wantsReason ? why : first).current?.focus();
  };
  const give = (event: Event): void => {
    event.preventDefault();
    const given = givenMark(marks, reason, of);
    if (given.ok) onGive(given.mark);
    else refuse(given.message);
  };
  return (
    <form
      class="own-mark-form"
      noValidate
      onSubmit={give}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        onLeave();
      }}
    >
      <label class="field own-mark-marks">
        <span>{say('mark.own-marks', { of: Math.round(of * 100) / 100 })}</span>
        <input
          ref={first}
          type="text"
          inputMode="decimal"
          name="own-marks"
          autoComplete="off"
          value={marks}
          onInput={({ currentTarget }) => setMarks(currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>{say('mark.own-reason')}</span>
        <textarea
          ref={why}
          name="own-reason"
          rows={2}
          maxLength={REASON_LENGTH}
          value={reason}
          onInput={({ currentTarget }) => setReason(currentTarget.value)}
        />
      </label>
      {trouble ? (
        <p class="trouble" role="alert">
          {say.message(trouble)}
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
