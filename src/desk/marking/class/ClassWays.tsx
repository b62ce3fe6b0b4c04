import type { VNode } from 'preact';
import { type WayTaken, wayWords } from '../../../exchange/class/ways.ts';
import type { Say } from '../../../table/say.ts';
import { spelled } from '../../../words/unseen.ts';
import { Names } from '../Names.tsx';
import type { Opened } from '../piece/use-opened.ts';
import { studentName } from '../student-name.ts';
import type { TheClass } from '../the-class.ts';

interface ClassWaysProps {
  readonly ways: readonly WayTaken[];
  readonly worked: number;
  readonly title: string;
  readonly work: TheClass;
  readonly opened: Opened;
  readonly say: Say;
}

/** The wrong ways that were gone in an exercise: how many went them and who, in the words that were said of them. */
export function ClassWays({ ways, worked, title, work, opened, say }: ClassWaysProps): VNode | null {
  if (ways.length === 0) return null;
  return (
    <section>
      <h4>{say('class.ways')}</h4>
      <ul class="class-ways">
        {ways.map(({ exercise, target, id, students, says, to }) => (
          <li key={`${target}/${id}`}>
            <p class="class-way">
              {say('class.way', {
                target: { named: target },
                way: { said: wayWords(id) },
                count: students.length,
                worked,
              })}
            </p>
            <p class="class-said">
              {say('class.said-to', { student: studentName(work.whoIs(to), say), says: spelled(say.message(says)) })}
            </p>
            <Names students={students} exercise={exercise} title={title} work={work} opened={opened} say={say} />
          </li>
        ))}
      </ul>
    </section>
  );
}
