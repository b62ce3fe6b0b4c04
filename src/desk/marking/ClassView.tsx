import type { VNode } from 'preact';
import {
  type CheckReport,
  type ClassReport,
  type ExerciseReport,
  LEAST_COMPLETE,
} from '../../exchange/class/report.ts';
import type { Say } from '../../table/say.ts';

interface ClassViewProps {
  readonly report: ClassReport;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
}

/** What the class has understood and what not, with a sentence on each figure that a teacher can use. */
export function ClassView({ report, titles, say }: ClassViewProps): VNode | null {
  if (report.work === 0) return null;
  return (
    <section class="class-view" aria-labelledby="mark-class">
      <h2 id="mark-class">{say('mark.class')}</h2>
      <p>{say('mark.facility-why')}</p>
      {report.exercises.map((exercise) => (
        <Exercise
          key={exercise.exercise}
          report={exercise}
          title={titles.get(exercise.exercise) ?? exercise.exercise}
          say={say}
        />
      ))}
      <p>
        {report.alpha === null
          ? say('mark.alpha-none', { least: LEAST_COMPLETE, complete: report.complete })
          : say('mark.alpha', { alpha: hundredth(report.alpha), complete: report.complete })}
      </p>
    </section>
  );
}

interface ExerciseProps {
  readonly report: ExerciseReport;
  readonly title: string;
  readonly say: Say;
}

function Exercise({ report, title, say }: ExerciseProps): VNode {
  const { worked, facility, discrimination, checks } = report;
  return (
    <section class="class-exercise">
      <h3>{title}</h3>
      <p>
        {say('mark.worked', { worked, facility: percent(facility) })}{' '}
        {discrimination === null
          ? say('mark.discrimination-none')
          : say('mark.discrimination', { index: hundredth(discrimination) })}
      </p>
      <ol class="class-checks">
        {checks.map((check, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a check is known by its place in the exercise.
          <Check key={place} check={check} say={say} />
        ))}
      </ol>
    </section>
  );
}

/** One check: how much of it was earned, as a bar and in words, and the wrong ways that were gone. */
function Check({ check, say }: { readonly check: CheckReport; readonly say: Say }): VNode {
  const { target, facility, asked, missing, misreadings } = check;
  const named = { named: target };
  return (
    <li>
      <span class="class-check">{say('mark.check', { target: named, check: check.check })}</span>
      <svg class="class-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
        <rect class="class-bar-all" width="100" height="8" />
        <rect class="class-bar-earned" width={facility * 100} height="8" />
      </svg>
      <span class="class-facility">{say('mark.earned', { facility: percent(facility) })}</span>
      {misreadings.length > 0 || missing > 0 ? (
        <span class="class-ways">
          {[
            ...misreadings.map(({ id, count }) => say('mark.way', { way: id.replaceAll('-', ' '), count, asked })),
            ...(missing > 0 ? [say('mark.missing', { count: missing })] : []),
          ].join('; ')}
        </span>
      ) : null}
    </li>
  );
}

function percent(share: number): string {
  return String(Math.round(share * 100));
}

function hundredth(value: number): string {
  return (Math.round(value * 100) / 100).toFixed(2);
}
