import type { VNode } from 'preact';
import type { TargetMarks } from '../../../exchange/notes/noted-marks.ts';
import type { OwnMark } from '../../../exchange/notes/notes.ts';
import type { Say } from '../../../table/say.ts';
import { spelledLines } from '../../../words/unseen.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { OwnMarkForm } from './OwnMarkForm.tsx';
import { type FormOpen, useFormOpen } from './use-form-open.ts';

interface MarksProps {
  readonly marks: TargetMarks;
  readonly say: Say;
  /** Gives the teacher's mark, or with null takes it back. */
  readonly onMark: (mark: OwnMark | null) => void;
}

/** The marks of one target, and where a teacher gives another. */
export function Marks({ marks, say, onMark }: MarksProps): VNode {
  const form = useFormOpen();
  return (
    <div class="own-mark">
      <GivenMarks marks={marks} say={say} />
      {form.isOpen ? (
        <OwnMarkForm
          before={marks.own}
          of={marks.of}
          say={say}
          onGive={(mark) => {
            onMark(mark);
            form.close();
          }}
          onLeave={form.close}
        />
      ) : (
        <Changes marks={marks} form={form} say={say} onMark={onMark} />
      )}
    </div>
  );
}

/** What changes the mark, or takes the teacher's back. */
function Changes({ marks, form, say, onMark }: MarksProps & { readonly form: FormOpen }): VNode {
  const named = { target: { named: marks.target } };
  return (
    <span class="own-mark-ends">
      <button
        ref={form.opener}
        type="button"
        class="button button--quiet"
        data-do="change-mark"
        aria-label={say('mark.own-change-what', named)}
        onClick={form.open}
      >
        {say('mark.own-change')}
      </button>
      {marks.own === null ? null : (
        <button
          type="button"
          class="button button--quiet"
          data-do="take-back"
          aria-label={say('mark.own-back-what', named)}
          onClick={() => {
            onMark(null);
            form.opener.current?.focus();
          }}
        >
          {say('mark.own-back')}
        </button>
      )}
    </span>
  );
}

/** The grader's marks always, and the teacher's beside them with the reason. */
function GivenMarks({ marks, say }: Pick<MarksProps, 'marks' | 'say'>): VNode {
  const { grader, own } = marks;
  const of = tidyMarks(marks.of);
  return (
    <>
      <span class="own-mark-grader" data-replaced={own !== null}>
        {say('mark.grader-gives', { marks: tidyMarks(grader), of })}
      </span>{' '}
      {own === null ? null : (
        <span class="own-mark-own">
          {spelledLines(say('mark.own-gives', { marks: tidyMarks(own.marks), of, reason: own.reason }))}
        </span>
      )}
    </>
  );
}
