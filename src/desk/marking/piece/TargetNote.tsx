import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { TargetMarks } from '../../../exchange/notes/noted-marks.ts';
import type { OwnMark } from '../../../exchange/notes/notes.ts';
import type { TargetReport } from '../../../grader/result.ts';
import type { Say } from '../../../table/say.ts';
import { spelled, spelledLines } from '../../../words/unseen.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { OwnMarkForm } from './OwnMarkForm.tsx';

interface TargetNoteProps {
  readonly report: TargetReport;
  /** Null where nothing is earned by this target. */
  readonly marks: TargetMarks | null;
  readonly say: Say;
  /** Gives the teacher's mark, or with null takes it back. */
  readonly onMark: (mark: OwnMark | null) => void;
}

/** What is said of one target, and its marks: the grader's and, where the teacher gave another, hers with the reason. */
export function TargetNote({ report, marks, say, onMark }: TargetNoteProps): VNode {
  const { target, status, sentences } = report;
  return (
    <div class="piece-note" data-status={status} data-target={target}>
      <h3>
        {say('table.label', { name: { named: target } })}{' '}
        <span class="piece-status">{say('table.status', { status })}</span>
      </h3>
      <p>{spelled(sentences.map((sentence) => say.message(sentence)).join(' '))}</p>
      {marks === null ? null : <Marks marks={marks} say={say} onMark={onMark} />}
    </div>
  );
}

interface MarksProps {
  readonly marks: TargetMarks;
  readonly say: Say;
  readonly onMark: (mark: OwnMark | null) => void;
}

function Marks({ marks, say, onMark }: MarksProps): VNode {
  const { target, own, of } = marks;
  const [writing, setWriting] = useState(false);
  const change = useRef<HTMLButtonElement>(null);
  const wrote = useRef(false);
  useEffect(() => {
    // Whoever leaves the form stands where it was opened.
    if (wrote.current && !writing) change.current?.focus();
    wrote.current = writing;
  }, [writing]);
  const named = { target: { named: target } };
  return (
    <div class="own-mark">
      <GivenMarks marks={marks} say={say} />
      {writing ? (
        <OwnMarkForm
          before={own}
          of={of}
          say={say}
          onGive={(mark) => {
            onMark(mark);
            setWriting(false);
          }}
          onLeave={() => setWriting(false)}
        />
      ) : (
        <span class="own-mark-ends">
          <button
            ref={change}
            type="button"
            class="button button--quiet"
            data-do="change-mark"
            aria-label={say('mark.own-change-what', named)}
            onClick={() => setWriting(true)}
          >
            {say('mark.own-change')}
          </button>
          {own === null ? null : (
            <button
              type="button"
              class="button button--quiet"
              data-do="take-back"
              aria-label={say('mark.own-back-what', named)}
              onClick={() => {
                onMark(null);
                change.current?.focus();
              }}
            >
              {say('mark.own-back')}
            </button>
          )}
        </span>
      )}
    </div>
  );
}

/** The grader's marks always, and the teacher's beside them with the reason. */
function GivenMarks({ marks, say }: { readonly marks: TargetMarks; readonly say: Say }): VNode {
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
