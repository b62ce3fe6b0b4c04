import type { VNode } from 'preact';
import { useId, useMemo, useRef } from 'preact/hooks';
import { bandOf } from '../../../exchange/class/laid/band.ts';
import type { Footing } from '../../../exchange/class/laid/footing.ts';
import { usualStrictness } from '../../../exchange/class/laid/strictness.ts';
import type { UnderSheet } from '../../../exchange/class/laid/under-sheet.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import { SheetDrawing } from '../../../table/drawing/SheetDrawing.tsx';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../intake/taken.ts';
import { Names } from '../Names.tsx';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import { ASPECT, classDrawing } from './class-drawing.ts';
import { classSentences, togetherSentence, whyNoChalk } from './class-sentences.ts';
import type { ClassTarget } from './class-target.ts';
import type { Lone } from './together.ts';
import { useSeen } from './use-seen.ts';

interface ClassPictureProps {
  readonly exercise: Exercise;
  readonly target: string;
  readonly answers: ClassTarget;
  readonly under: UnderSheet;
  readonly footing: Footing;
  readonly pieces: readonly Sound[];
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** How wide a picture is on a screen, and on A4 with another beside it, px: its words are seated for both (class-view.css). */
const WIDTHS = [352, 302] as const;
const HEIGHTS = [WIDTHS[0] / ASPECT, WIDTHS[1] / ASPECT] as const;

/** Of more answers than this each is drawn finer, and of many more finer yet. */
const CROWDS = { some: 24, many: 100 } as const;

/** One target of an exercise: the answers of the class over the right one, in a picture and in words. */
export function ClassPicture(props: ClassPictureProps): VNode {
  const { exercise, target, answers, under, footing, pieces, say } = props;
  const frame = useRef<HTMLElement>(null);
  const seen = useSeen(frame);
  const by = useMemo(() => usualStrictness(pieces.map(({ row }) => row)), [pieces]);
  const half = by && bandOf(exercise, target, by.strictness);
  const says = classSentences(answers, footing, pieces.length).map(say.message).join(' ');
  const title = say('table.label', { name: { named: target } });
  const spoken = `${title}. ${says}`;
  return (
    <figure class="class-picture" data-crowd={crowdOf(pieces.length)} ref={frame}>
      {seen ? (
        <ClassDrawing
          exercise={exercise}
          under={under}
          footing={footing}
          half={half}
          answers={answers}
          says={spoken}
          say={say}
        />
      ) : (
        <div class="class-unseen" role="img" aria-label={spoken} />
      )}
      <figcaption>
        <strong>{title}:</strong> {says} {chalkWords(half, by, props)}
        {answers.together.map((bundle) => (
          <Them
            key={bundle[0]?.student}
            {...props}
            who={bundle}
            says={say.message(togetherSentence(bundle, footing))}
          />
        ))}
        <Them {...props} who={answers.alone} says={say('class.furthest')} />
      </figcaption>
    </figure>
  );
}

/** Some students by name, and what is said of them. */
function Them({
  who,
  says,
  exercise,
  work,
  opened,
  say,
}: ClassPictureProps & { readonly who: readonly Lone[]; readonly says: string }): VNode | null {
  if (who.length === 0) return null;
  const students = who.map(({ student }) => student);
  return (
    <div class="class-them">
      {says}{' '}
      <Names students={students} exercise={exercise.id} title={exercise.title} work={work} opened={opened} say={say} />
    </div>
  );
}

function crowdOf(answers: number): 'few' | 'some' | 'many' {
  if (answers > CROWDS.many) return 'many';
  return answers > CROWDS.some ? 'some' : 'few';
}

/** Why there is no chalk, or by what it is drawn where the class was not marked by one and the same. */
function chalkWords(
  half: number | null,
  by: ReturnType<typeof usualStrictness>,
  { exercise, target, under, pieces, say }: ClassPictureProps,
): string | null {
  if (half === null) return say.message(whyNoChalk(exercise, target, under.givens.measures));
  if (by === null || by.count === pieces.length) return null;
  const strictness = say(`class.chalk.${by.strictness}`);
  return say('class.chalk-by', { strictness, count: by.count, worked: pieces.length });
}

interface ClassDrawingProps extends Pick<ClassPictureProps, 'exercise' | 'under' | 'footing' | 'say'> {
  readonly answers: ClassTarget;
  readonly half: number | null;
  readonly says: string;
}

function ClassDrawing({ exercise, under, footing, answers, half, says, say }: ClassDrawingProps): VNode {
  const { unit } = say.reader;
  const drawing = useMemo(
    () => classDrawing({ under, shows: exercise.shows, footing, half, unit, answers }),
    [under, exercise, footing, half, unit, answers],
  );
  return <SheetDrawing drawing={drawing} reader={say.reader} id={useId()} says={says} heights={HEIGHTS} />;
}
