import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Answer } from '../../../../src/desk/marking/intake/marking-worker.ts';
import { type DeskState, PileRunner } from '../../../../src/desk/marking/intake/pile-runner.ts';
import { refusedAt } from '../../../../src/desk/marking/intake/refused.ts';
import type { Intake } from '../../../../src/desk/marking/intake/taken.ts';
import { NO_NOTES, withStudent } from '../../../../src/exchange/notes/notes.ts';
import { message } from '../../../../src/words/message.ts';

/** A worker that does nothing by itself: what it says is put into its mouth. */
class Mute extends EventTarget {
  static hired: Mute[] = [];
  ended = false;
  constructor() {
    super();
    Mute.hired.push(this);
  }
  readonly postMessage = vi.fn();
  terminate(): void {
    this.ended = true;
  }
  says(data: Answer): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
}

beforeEach(() => {
  Mute.hired = [];
  vi.stubGlobal('Worker', Mute);
});
afterEach(() => vi.unstubAllGlobals());

const file = (name: string, text = 'x') => ({ name, file: new File([text], name) });
const unread = (where: string) =>
  ({ kind: 'taken', taken: refusedAt(where, message('mark.unreadable')) }) satisfies Intake;
const done = (name: string) => ({ kind: 'done', name, size: 1 }) satisfies Intake;

/** A desk on which these files were laid, the worker that marks them, and what lies there by name and reason. */
function deskWith(...names: readonly string[]) {
  const told: DeskState[] = [];
  const runner = new PileRunner('exercises.json', (state) => told.push(state));
  runner.takeIn(names.map((name) => file(name)));
  const lying = () =>
    runner.held().taken.map((one) => (one.ok ? [] : [one.where, 'key' in one.message ? one.message.key : '']));
  return { runner, told, lying, worker: Mute.hired[0] as Mute };
}

describe('marking that is stopped', () => {
  test('tells of every file that was not done, also of one of two that have the same name', () => {
    const { runner, lying, worker } = deskWith('a/x.json', 'x.json', 'x.json');
    worker.says([unread('x.json'), done('x.json')]);
    runner.stop();
    expect(lying()).toEqual([
      ['x.json', 'mark.unreadable'],
      ['a/x.json', 'mark.stopped'],
    ]);
    expect(runner.held().again).toBe(1);
    expect(worker.ended).toBe(true);
  });

  test('takes nothing more that was on its way when the desk was cleared', () => {
    const { runner, lying, worker, told } = deskWith('x.json');
    runner.clear();
    worker.says([unread('x.json')]);
    worker.dispatchEvent(new Event('error'));
    expect(lying()).toEqual([]);
    expect(told.at(-1)).toMatchObject({ failed: false, progress: null });
  });
});

test('a desk that is cleared keeps the class list, and nothing else that was written', () => {
  const { runner } = deskWith('x.json');
  const comment = { comment: 'Measure.', until: '2026-03-13T17:00:00.000Z' };
  runner.write((now) => ({ ...withStudent(now, { student: 'Bo', number: '' }, comment), list: 'Bo', counts: 'best' }));
  runner.clear();
  expect(runner.held().notes).toEqual({ ...NO_NOTES, list: 'Bo' });
});

describe('a worker that breaks down', () => {
  test('is said, and every file is told that was not done', () => {
    const { lying, worker, told } = deskWith('a.json', 'b.json');
    worker.says([unread('a.json'), done('a.json')]);
    worker.dispatchEvent(new Event('error'));
    expect(told.at(-1)).toMatchObject({ failed: true, progress: null });
    expect(lying()).toEqual([
      ['a.json', 'mark.unreadable'],
      ['b.json', 'mark.stopped'],
    ]);
  });

  test('lets the next pile be marked by another', () => {
    const { runner, worker, told } = deskWith('a.json');
    worker.says({ failed: true });
    runner.takeIn([file('b.json')]);
    expect(Mute.hired).toHaveLength(2);
    expect(told.at(-1)).toMatchObject({ failed: false });
  });
});

test('piles are marked one after another, and how far they have come is told of all of them', () => {
  const { runner, worker, told } = deskWith('a.json');
  runner.takeIn([file('b.json'), file('c.json', 'xxx')]);
  expect(Mute.hired).toHaveLength(1);
  expect(told.at(-1)?.progress).toEqual({ done: 0, of: 5 });
  worker.says([done('a.json')]);
  expect(told.at(-1)?.progress).toEqual({ done: 1, of: 5 });
  worker.says([]);
  expect(Mute.hired).toHaveLength(2);
  Mute.hired[1]?.says([]);
  expect(told.at(-1)?.progress).toBeNull();
});
