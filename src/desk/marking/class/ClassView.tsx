import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { type Asked, isAsked } from '../../../exchange/class/asked.ts';
import { type ClassReport, classReport, type ExerciseReport, LEAST_COMPLETE } from '../../../exchange/class/report.ts';
import { waysTaken } from '../../../exchange/class/ways.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import type { Say } from '../../../table/say.ts';
import type { TheClass } from '../the-class.ts';
import { AlikeQuestions } from './AlikeQuestions.tsx';
import { ClassExercise } from './ClassExercise.tsx';
import './class-view.css';
import { hundredth } from './figures.ts';
import { TeachFirst } from './TeachFirst.tsx';
import type { ClassInHand } from './use-class.ts';

interface ClassViewProps {
  /** The exercises in the order of the gradebook. */
  readonly order: readonly string[];
  readonly inHand: ClassInHand;
  readonly set: ProblemSet | null;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
}

/** What the class has understood and what not, with a sentence on each figure that a teacher can use. */
export function ClassView({ inHand, order, set, titles, say }: ClassViewProps): VNode | null {
  const { work, opened, exercises } = inHand;
  const report = useMemo(
    () =>
      classReport(
        work.counted.map(({ kept }) => kept),
        set,
      ),
    [work, set],
  );
  const asked = useMemo(() => work.counted.filter(({ kept }) => isAsked(kept, set)), [work, set]);
  const ways = useMemo(() => waysTaken(work.counted.map(({ kept, ways: gone }) => ({ ...kept, ways: gone }))), [work]);
  if (report.work === 0) return null;
  return (
    <section class="class-view" aria-labelledby="mark-class">
      <h2 id="mark-class">{say('mark.class')}</h2>
      <TeachFirst counted={asked} titles={titles} say={say} />
      <AlikeQuestions alike={report.alike} titles={titles} work={work} opened={opened} say={say} />
      <p>{say('mark.facility-why')}</p>
      {inOrder(report, order).map((one) => (
        <ClassExercise
          key={one.exercise}
          report={one}
          ways={ways.filter((way) => way.exercise === one.exercise)}
          title={titles.get(one.exercise) ?? one.exercise}
          work={work}
          exercises={exercises}
          opened={opened}
          say={say}
        />
      ))}
      <p>{alphaWords(report, say)}</p>
      <Aside {...{ work, set, titles, say }} />
    </section>
  );
}

/** The reports on its exercises, as the gradebook has them. */
function inOrder({ exercises }: ClassReport, order: readonly string[]): readonly ExerciseReport[] {
  return exercises.toSorted((a, b) => order.indexOf(a.exercise) - order.indexOf(b.exercise));
}

/** How far the exercises measure one skill, or that the class is too small to say. */
function alphaWords({ alpha, complete }: ClassReport, say: Say): string {
  return alpha === null
    ? say('mark.alpha-none', { least: LEAST_COMPLETE, complete })
    : say('mark.alpha', { alpha: hundredth(alpha), complete });
}

interface AsideProps {
  readonly work: TheClass;
  readonly set: Asked;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
}

/** Work of exercises that the set has not, which is told of nowhere here. */
function Aside({ work, set, titles, say }: AsideProps): VNode | null {
  const aside = work.counted.filter(({ kept }) => !isAsked(kept, set)).map(({ kept }) => kept.exercise);
  if (aside.length === 0) return null;
  const listed = [...new Set(aside)].map((exercise) => titles.get(exercise) ?? exercise);
  return <p class="small">{say('class.aside', { count: aside.length, titles: { listed } })}</p>;
}
