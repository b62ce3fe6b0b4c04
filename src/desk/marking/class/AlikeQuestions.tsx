import type { VNode } from 'preact';
import type { AlikeDrafts } from '../../../exchange/class/alike/alike-drafts.ts';
import type { Say } from '../../../table/say.ts';
import { Names } from '../Names.tsx';
import type { Opened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';

interface AlikeQuestionsProps {
  readonly alike: readonly AlikeDrafts[];
  readonly titles: ReadonlyMap<string, string>;
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** Drafts that are alike where they should not be: a question for the teacher to ask, and no verdict. */
export function AlikeQuestions({ alike, titles, work, opened, say }: AlikeQuestionsProps): VNode | null {
  if (alike.length === 0) return null;
  return (
    <section class="alike" aria-labelledby="class-alike">
      <h3 id="class-alike">{say('class.alike')}</h3>
      <ul>
        {alike.map(({ exercise, students, numbers }) => {
          const title = titles.get(exercise) ?? exercise;
          const keys = students.map(({ key }) => key);
          return (
            <li key={JSON.stringify([exercise, keys])}>
              <p>{say('class.alike-what', { title, count: keys.length, numbers })}</p>
              <Names students={keys} exercise={exercise} title={title} work={work} opened={opened} say={say} />
            </li>
          );
        })}
      </ul>
      <p>{say('class.alike-ask')}</p>
    </section>
  );
}
