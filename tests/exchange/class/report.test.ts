import { describe, expect, test } from 'vitest';
import { type ClassWork, latestOf } from '../../../src/exchange/class/class-work.ts';
import { besideOf } from '../../../src/exchange/class/counting.ts';
import { classReport, LEAST_COMPLETE, LEAST_GROUP } from '../../../src/exchange/class/report.ts';

/** A piece of work with one check, right or misread. */
function work(student: string, exercise: string, share: number, more: Partial<ClassWork> = {}): ClassWork {
  const status = share === 1 ? 'within' : share === 0.5 ? 'near' : 'beyond';
  const misreading = share === 0 ? 'through-neck-point' : null;
  const checks = [{ target: 'roll-line', check: 'line', share, status, misreading } as const];
  const who = { student, number: '' };
  return { student, who, exercise, saved: null, share, checks, freeHand: null, ...more };
}

const names = (count: number) => Array.from({ length: count }, (_, at) => `student ${at}`);

describe('the report on a class', () => {
  test('tells of a class of any size', () => {
    const size = 150_000;
    const { students, exercises } = classReport(
      names(size).map((student) => work(student, 'roll-line', 1)),
      null,
    );
    expect([students, exercises[0]?.worked, exercises[0]?.checks[0]?.asked]).toEqual([size, size, size]);
  });

  test('tells for every check how much of it was earned, and the wrong ways with how many went them', () => {
    const { exercises } = classReport(
      [work('a', 'roll-line', 1), work('b', 'roll-line', 0.5), work('c', 'roll-line', 0), work('d', 'roll-line', 0)],
      null,
    );
    expect(exercises).toEqual([
      {
        exercise: 'roll-line',
        worked: 4,
        facility: 0.375,
        discrimination: null,
        checks: [
          {
            target: 'roll-line',
            check: 'line',
            asked: 4,
            facility: 0.375,
            missing: 0,
            misreadings: [{ id: 'through-neck-point', count: 2 }],
          },
        ],
      },
    ]);
  });

  test('counts the last of what a student handed in more than once, wherever it was found', () => {
    const [early, late] = ['2026-03-01T09:00:00Z', '2026-03-02T09:00:00Z'];
    const report = classReport(
      [
        work('a', 'swing', 1, { saved: late }),
        work('a', 'swing', 0, { saved: early }),
        work('b', 'swing', 1),
        work('b', 'swing', 0),
      ],
      null,
    );
    expect(report).toMatchObject({ students: 2, work: 2, repeated: 2 });
    expect(report.exercises[0]?.facility).toBe(0.5);
  });

  test('knows which pieces a later one took the place of', () => {
    const [first, last, other] = [
      work('a', 'swing', 0, { saved: '2026-03-01T09:00:00Z' }),
      work('a', 'swing', 1, { saved: '2026-03-02T09:00:00Z' }),
      work('b', 'swing', 0, { saved: '2026-03-01T08:00:00Z' }),
    ];
    const all = [last, first, other];
    expect(besideOf(all, latestOf(all))).toEqual([first]);
    expect(besideOf([other], latestOf([other]))).toEqual([]);
  });

  test('says nothing of a class too small, and says it of one just large enough', () => {
    const class_ = (count: number) =>
      names(count).flatMap((name, at) => [work(name, 'overlap', at % 2), work(name, 'swing', at % 3 === 0 ? 1 : 0)]);
    const groups = Math.ceil((LEAST_GROUP - 0.5) / 0.27);
    expect(classReport(class_(groups - 1), null).exercises[0]?.discrimination).toBeNull();
    expect(classReport(class_(groups), null).exercises[0]?.discrimination).not.toBeNull();
    expect(classReport(class_(LEAST_COMPLETE - 1), null).alpha).toBeNull();
    expect(classReport(class_(LEAST_COMPLETE), null).alpha).not.toBeNull();
  });

  test('takes for alpha only those who did everything', () => {
    const whole = names(LEAST_COMPLETE).flatMap((name, at) => [
      work(name, 'overlap', at % 2),
      work(name, 'swing', at % 2),
    ]);
    const report = classReport([...whole, work('late comer', 'swing', 1)], null);
    expect(report.complete).toBe(LEAST_COMPLETE);
    expect(report.alpha).toBeCloseTo(1, 12);
  });

  test('tells of the set alone: what one student did for another week is nobody else’s to have missed', () => {
    const set = { exercises: ['overlap', 'swing'].map((exercise) => ({ exercise, marks: 10 })) };
    const whole = names(LEAST_COMPLETE).flatMap((name, at) => [
      work(name, 'overlap', at % 2),
      work(name, 'swing', at % 2),
    ]);
    const strange = work('student 0', 'shawl', 1);
    expect(classReport([...whole, strange], null).alpha).toBeNull();
    const report = classReport([...whole, strange], set);
    expect(report.exercises.map(({ exercise }) => exercise)).toEqual(['overlap', 'swing']);
    expect(report).toMatchObject({
      students: LEAST_COMPLETE,
      work: whole.length + 1,
      aside: 1,
      complete: LEAST_COMPLETE,
    });
    expect(report.alpha).toBeCloseTo(1, 12);
  });

  test('of nothing is empty', () => {
    const counts = { students: 0, work: 0, repeated: 0, aside: 0, complete: 0 };
    expect(classReport([], null)).toEqual({ ...counts, exercises: [], alpha: null, alike: [] });
  });

  test('leaves out the checks of a draft that could not be laid on the table', () => {
    const { exercises } = classReport([work('a', 'swing', 1), work('b', 'swing', 0, { checks: [] })], null);
    expect(exercises[0]).toMatchObject({ worked: 2, facility: 0.5, checks: [{ asked: 1, facility: 1 }] });
  });
});
