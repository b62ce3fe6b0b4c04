import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { classReport, type ExerciseReport, LEAST_COMPLETE } from '../../../exchange/class/report.ts';
import { waysTaken } from '../../../exchange/class/ways.ts';
import type { Say } from '../../../table/say.ts';
import { AlikeQuestions } from './AlikeQuestions.tsx';
import { ClassExercise } from './ClassExercise.tsx';
import './class-view.css';
import { hundredth } from './figures.ts';
import type { ClassInHand } from './use-class.ts';

interface ClassViewProps {
  /** The exercises in the order of the gradebook. */
  readonly order: readonly string[];
  readonly inHand: ClassInHand;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
}

/** What the class has understood and what not, with a sentence on each figure that a teacher can use. */
export function ClassView({ inHand, order, titles, say }: ClassViewProps): VNode | null {
  const { sound, work, opened, exercises } = inHand;
  const report = useMemo(() => classReport(sound.map(({ kept }) => kept)), [sound]);
  const ways = useMemo(() => waysTaken(work.counted.map(({ kept, ways: gone }) => ({ ...kept, ways: gone }))), [work]);
  if (report.work === 0) return null;
  const place = ({ exercise }: ExerciseReport): number => order.indexOf(exercise);
  return (
    <section class="class-view" aria-labelledby="mark-class">
      <h2 id="mark-class">{say('mark.class')}</h2>
      <AlikeQuestions alike={report.alike} titles={titles} work={work} opened={opened} say={say} />
      <p>{say('mark.facility-why')}</p>
      {report.exercises
        .toSorted((a, b) => place(a) - place(b))
        .map((exercise) => (
          <ClassExercise
            key={exercise.exercise}
            report={exercise}
            ways={ways.filter((way) => way.exercise === exercise.exercise)}
            title={titles.get(exercise.exercise) ?? exercise.exercise}
            work={work}
            exercises={exercises}
            opened={opened}
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
