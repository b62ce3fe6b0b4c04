import type { VNode } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Feedback } from '../../exchange/set.ts';
import type { Grade, TargetReport } from '../../grader/result.ts';
import { verdictAlone } from '../../grader/verdict.ts';
import type { Onward } from '../onward.ts';
import type { Say } from '../say.ts';
import { targetsBy } from '../use-marking.ts';
import { ReportEnds } from './ReportEnds.tsx';
import { Said } from './Said.tsx';

interface ReportProps {
  readonly grade: Grade;
  /** Whether the draft was checked just now: one that was when the page was left has its notes again, and nothing more. */
  readonly isNew: boolean;
  /** Whether the draft has been changed since. */
  readonly stale: boolean;
  readonly shown: boolean;
  readonly feedback: Feedback;
  /** How often the draft may still be checked; null where nobody counts. */
  readonly left: number | null;
  /** The marks as programs read them, so that the page can be held against the command. */
  readonly row: string | undefined;
  /** What comes next; null where nothing does. */
  readonly onward: Onward | null;
  readonly say: Say;
  readonly onShow: () => void;
  readonly onRubOut: () => void;
}

/** The marker's notes under the sheet: first what went right, then one short paragraph a target. */
export function Report(props: ReportProps): VNode {
  const { grade, isNew, stale, feedback, row, say } = props;
  const head = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the notes are read from the top whenever a draft is marked anew.
  useLayoutEffect(() => {
    if (isNew) head.current?.focus();
  }, [grade]);
  const right = targetsBy(grade, 'right');
  const rest = grade.reports.filter(({ status }) => status !== 'within');
  const tells = feedback !== 'verdict';
  return (
    <section class="report" data-row={row} aria-labelledby="report-title">
      <h2 id="report-title" tabIndex={-1} ref={head}>
        {feedback === 'verdict'
          ? say('table.right-of', { right: right.length, of: grade.reports.length })
          : say('table.marks-of', { marks: grade.marks, of: grade.of })}
      </h2>
      <p class="report-right">{rightWords(right, rest.length === 0, tells, say)}</p>
      {stale ? <p class="report-stale">{say('table.stale')}</p> : null}
      <Problems grade={grade} say={say} />
      {[...rest, ...grade.reports.filter(({ status }) => status === 'within')].map((report) => (
        <Note key={report.target} report={report} tells={tells} say={say} />
      ))}
      {tells ? <Others grade={grade} say={say} /> : null}
      <ReportEnds wrong={rest.map(({ target }) => target)} {...props} />
    </section>
  );
}

/** Steps that could not be carried out. */
function Problems({ grade, say }: { readonly grade: Grade; readonly say: Say }): VNode | null {
  if (grade.problems.length === 0) return null;
  return (
    <ul class="report-problems">
      {grade.problems.map((problem) => (
        <li key={say.message(problem)}>{say.message(problem)}</li>
      ))}
    </ul>
  );
}

function rightWords(right: readonly string[], all: boolean, tells: boolean, say: Say): string {
  if (all) return say('table.report-all');
  if (right.length === 0) return say(tells ? 'table.report-none' : 'table.report-none-right');
  return say('table.report-right', { targets: { namedAll: right } });
}

interface NoteProps {
  readonly report: TargetReport;
  /** Whether it is told how the answer is off, or only that it is. */
  readonly tells: boolean;
  readonly say: Say;
}

function Note({ report, tells, say }: NoteProps): VNode {
  return (
    <div class="note" data-status={report.status} data-target={report.target}>
      <h3>
        <span class="note-target">{say('table.label', { name: { named: report.target } })}</span>
        <span class="note-status">
          {say('verdict.word', { verdict: tells ? report.verdict : verdictAlone(report.verdict) })}
        </span>
      </h3>
      {tells ? <Said report={report} say={say} /> : null}
    </div>
  );
}

/** What the draft does on other people, and which step lets go. */
function Others({ grade, say }: { readonly grade: Grade; readonly say: Say }): VNode | null {
  const { tried, held, letGo } = grade.otherFigures;
  if (tried === 0) return null;
  return (
    <div class="note" data-status={held === tried ? 'within' : 'near'} data-target="others">
      <p>{held === tried ? say('table.others-held-all', { tried }) : say('table.others-held', { held, tried })}</p>
      {letGo.length > 0 ? (
        <ul>
          {letGo.map(({ target, name, message: why }) => (
            <li key={`${target}/${name}`}>{say.message(why)}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
