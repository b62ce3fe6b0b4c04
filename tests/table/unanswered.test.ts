import { describe, expect, test } from 'vitest';
import { whatStays } from '../../src/table/model/stays.ts';
import { unanswered } from '../../src/table/model/unanswered.ts';
import { say } from '../../src/words/say.ts';
import { benchAfter, crossing, edge, level, room, step } from './room.ts';

describe('before a draft is checked', () => {
  test('one is reminded of targets that nothing answers while something drawn might', () => {
    expect(unanswered(benchAfter([...edge]).steps, room)).toEqual(['overlap-edge', 'break-point']);
    expect(unanswered(benchAfter([...edge, ...level, ...crossing]).steps, room)).toEqual(['overlap-edge']);
  });

  test('one is not reminded where everything is answered, or nothing drawn is of a kind asked for', () => {
    const answered = benchAfter([
      ...step('parallel', { to: 'centre-front', distance: 'overlap', side: 'left' }, 'overlap-edge'),
      ...level,
      ...step('cross', { one: 'overlap-edge', other: 'line-1' }, 'break-point'),
    ]);
    expect(unanswered(answered.steps, room)).toEqual([]);
    expect(unanswered([], room)).toEqual([]);
    const taped = benchAfter(step('tape-between', { from: 'neck-point', to: 'shoulder-tip' }));
    expect(taped.steps).toHaveLength(1);
    expect(unanswered(taped.steps, room)).toEqual([]);
  });
});

describe('the working says what stays as it is when the figure changes', () => {
  const said = (actions: Parameters<typeof benchAfter>[0]) => {
    const [first] = benchAfter(actions).steps;
    const stays = first ? whatStays(first) : null;
    return stays && say(stays, { language: 'en', unit: 'cm' });
  };

  test('a mark by eye', () => {
    expect(said(step('pencil', { at: [-30, 40] }))).toMatchInlineSnapshot(
      `"Made by eye: mark 1 stays here when the figure changes. Laid off from the block, it would follow."`,
    );
  });

  test('a number, but not a name, nor nothing', () => {
    expect(said(level)).toMatchInlineSnapshot(
      `"The number 4 cm stays the same when the figure changes. If a measure is meant, write its name."`,
    );
    expect(said(edge)).toBeNull();
    expect(said(step('parallel', { to: 'waist', distance: '0 mm', side: 'up' }))).toBeNull();
  });
});
