import type { VNode } from 'preact';
import { useId, useMemo, useRef } from 'preact/hooks';
import { bandOf } from '../../../exchange/class/laid/band.ts';
import type { Footing } from '../../../exchange/class/laid/footing.ts';
import type { UnderSheet } from '../../../exchange/class/laid/under-sheet.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import { SheetDrawing } from '../../../table/drawing/SheetDrawing.tsx';
import type { Say } from '../../../table/say.ts';
import type { Sound } from '../book/Book.tsx';
import { Names } from '../Names.tsx';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import { classDrawing } from './class-drawing.ts';
import { classSentences, whyNoChalk } from './class-sentences.ts';
import { type ClassTarget, classTarget } from './class-target.ts';
import { useSeen } from './use-seen.ts';

interface ClassPictureProps {
  readonly exercise: Exercise;
  readonly target: string;
  readonly under: UnderSheet;
  readonly footing: Footing;
  readonly pieces: readonly Sound[];
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** So many of those who are furthest off are named. */
const NAMED = 5;

/** One target of an exercise: the answers of the class over the right one, in a picture and in words. */
export function ClassPicture(props: ClassPictureProps): VNode {
  const { exercise, target, under, footing, pieces, work, opened, say } = props;
  const frame = useRef<HTMLElement>(null);
  const seen = useSeen(frame);
  const class_ = useMemo(() => classTarget(pieces, target), [pieces, target]);
  const half = bandOf(exercise, target, pieces[0]?.row.strictness ?? 'workroom');
  const says = classSentences(class_, footing, pieces.length).map(say.message).join(' ');
  const title = say('table.label', { name: { named: target } });
  const spoken = `${title}. ${says}`;
  return (
    <figure class="class-picture" ref={frame}>
      {seen ? (
        <ClassDrawing
          exercise={exercise}
          under={under}
          footing={footing}
          half={half}
          target={class_}
          says={spoken}
          say={say}
        />
      ) : (
        <div class="class-unseen" role="img" aria-label={spoken} />
      )}
      <figcaption>
        <strong>{title}:</strong> {says} {half === null ? say.message(whyNoChalk(exercise, target)) : null}
        {class_.furthest.length === 0 ? null : (
          <div class="class-furthest">
            {say('class.furthest')}
            <Names
              students={class_.furthest.slice(0, NAMED)}
              exercise={exercise.id}
              title={exercise.title}
              work={work}
              opened={opened}
              say={say}
            />
          </div>
        )}
      </figcaption>
    </figure>
  );
}

interface ClassDrawingProps extends Pick<ClassPictureProps, 'exercise' | 'under' | 'footing' | 'say'> {
  readonly target: ClassTarget;
  readonly half: number | null;
  readonly says: string;
}

function ClassDrawing({ exercise, under, footing, target, half, says, say }: ClassDrawingProps): VNode {
  const { unit } = say.reader;
  const drawing = useMemo(
    () => classDrawing({ under, shows: exercise.shows, footing, half, unit, ...target }),
    [under, exercise, footing, half, unit, target],
  );
  return <SheetDrawing drawing={drawing} reader={say.reader} id={useId()} says={says} />;
}
