import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { underLessons } from '../../src/course/under-lessons.ts';
import { lessons } from './read-content.ts';

const heads = lessons.map(({ id, head }) => ({ id, data: head }));
const all = new Map(exerciseNames().map((name) => [name, loadExercise(name)]));
/** Those that lessons name; there may be others. */
const course = new Map([...all].filter(([name]) => heads.some(({ data }) => data.exercises.includes(name))));
const ids = (under: ReturnType<typeof underLessons>, lesson: string) => under.get(lesson)?.map(({ id }) => id);

describe('the exercises under the lessons', () => {
  test('are all there are, each once', () => {
    const shown = [...underLessons(heads, all).values()].flat().map(({ id }) => id);
    expect(shown.toSorted()).toEqual(exerciseNames());
  });

  test('stand as the lesson names them, and one that no lesson names stands last under the lesson it belongs to', () => {
    const own = { ...loadExercise('overlap'), id: 'a-pocket' };
    const under = underLessons(heads, new Map([[own.id, own], ...course]));
    expect(ids(under, 'overlap')).toEqual(['overlap', 'overlap-button', 'overlap-double', 'a-pocket']);
    expect(ids(under, 'roll-line')).toEqual(ids(underLessons(heads, course), 'roll-line'));
  });

  test('stand only where they are named, whatever lesson they belong to', () => {
    const borrowed = heads.map((head) =>
      head.id === 'outer-edge' ? { ...head, data: { exercises: ['overlap', 'swing'] } } : head,
    );
    const elsewhere = borrowed.map((head) =>
      head.id === 'overlap' ? { ...head, data: { exercises: ['overlap-button'] } } : head,
    );
    const under = underLessons(elsewhere, course);
    expect(ids(under, 'overlap')).toEqual(['overlap-button', 'overlap-double']);
    expect(ids(under, 'outer-edge')?.slice(0, 2)).toEqual(['overlap', 'swing']);
  });

  test('that are named and not there stop the build, with the nearest spelling', () => {
    const wrong = [{ id: 'overlap', data: { exercises: ['overlapp'] } }];
    expect(() => underLessons(wrong, course)).toThrow(/“overlapp”.*Did you mean “overlap”\?/);
  });
});
