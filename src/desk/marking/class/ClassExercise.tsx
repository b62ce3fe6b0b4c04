import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { lettingGo } from '../../../exchange/class/let-go.ts';
import type { CheckReport, ExerciseReport } from '../../../exchange/class/report.ts';
import type { WayTaken } from '../../../exchange/class/ways.ts';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../intake/taken.ts';
import { Names } from '../Names.tsx';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import type { ExercisesOnDesk } from '../use-exercises.ts';
import { ClassPictures } from './ClassPictures.tsx';
import { ClassWays } from './ClassWays.tsx';
import { type CheckName, checkNames } from './check-words.ts';
import { hundredth, percent } from './figures.ts';

interface ClassExerciseProps {
  readonly report: ExerciseReport;
  readonly ways: readonly WayTaken[];
  readonly title: string;
  readonly work: TheClass;
  readonly exercises: ExercisesOnDesk;
  readonly opened: Opened;
  readonly say: Say;
}

/** Where on the page an exercise is told of. */
export function sectionOf(exercise: string): string {
  return `class-${exercise}`;
}

/** What a class made of one exercise: how much of it was earned, the wrong ways that were gone, and where the answers lie. */
export function ClassExercise({ report, ways, title, work, exercises, opened, say }: ClassExerciseProps): VNode {
  const { exercise: name, worked, facility, discrimination, checks } = report;
  const pieces = useMemo(() => work.counted.filter(({ row }) => row.exercise === name), [work, name]);
  const exercise = exercises.known?.[name];
  const names = checkNames(exercise, checks);
  return (
    <section class="class-exercise" aria-labelledby={sectionOf(name)}>
      <h3 id={sectionOf(name)} tabIndex={-1}>
        {title}
      </h3>
      <p>
        {say('mark.worked', { worked, facility: percent(facility) })}{' '}
        {discrimination === null
          ? say('mark.discrimination-none')
          : say('mark.discrimination', { index: hundredth(discrimination) })}
      </p>
      <ol class="class-checks">
        {checks.map((check, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a check is known by its place in the exercise.
          <Check key={place} check={check} name={names[place]} say={say} />
        ))}
      </ol>
      <LettingGo pieces={pieces} title={title} work={work} opened={opened} say={say} />
      <ClassWays ways={ways} worked={worked} title={title} work={work} opened={opened} say={say} />
      {exercise ? <ClassPictures exercise={exercise} pieces={pieces} work={work} opened={opened} say={say} /> : null}
      {exercises.missing ? <p class="trouble">{say('class.no-picture')}</p> : null}
    </section>
  );
}

interface LettingGoProps extends Pick<ClassExerciseProps, 'title' | 'work' | 'opened' | 'say'> {
  readonly pieces: readonly Sound[];
}

/** Who drew it right for one figure alone. */
function LettingGo({ pieces, title, work, opened, say }: LettingGoProps): VNode | null {
  const students = lettingGo(pieces).map(({ kept }) => kept.student);
  const [first] = pieces;
  if (students.length === 0 || first === undefined) return null;
  const { exercise } = first.kept;
  return (
    <div class="class-them">
      {say('class.let-go', { count: students.length, worked: pieces.length })}{' '}
      <Names students={students} exercise={exercise} title={title} work={work} opened={opened} say={say} />
    </div>
  );
}

interface CheckProps {
  readonly check: CheckReport;
  readonly name: CheckName | undefined;
  readonly say: Say;
}

/** One check: how much of it was earned, as a bar and in words. */
function Check({ check, name, say }: CheckProps): VNode {
  const { target, facility, missing } = check;
  return (
    <li>
      <span class="class-check">{say('mark.check', { target: { named: target }, check: saidOf(name, say) })}</span>
      <svg class="class-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
        <rect class="class-bar-all" width="100" height="8" />
        <rect class="class-bar-earned" width={facility * 100} height="8" />
      </svg>
      <span class="class-facility">{say('mark.earned', { facility: percent(facility) })}</span>
      {missing > 0 ? <span class="class-missing">{say('mark.missing', { count: missing })}</span> : null}
    </li>
  );
}

function saidOf(name: CheckName | undefined, say: Say): string {
  if (name === undefined) return '';
  const check = say.message(name.words);
  return name.nth === null ? check : say('class.check-nth', { check, nth: name.nth });
}
