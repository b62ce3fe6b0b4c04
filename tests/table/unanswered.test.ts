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
    const stays = first ? whatStays(first, room.givens.measures) : null;
    return stays && say(stays, { language: 'en', unit: 'cm' });
  };

  test('a mark by eye', () => {
    expect(said(step('pencil', { at: [-30, 40] }))).toMatchInlineSnapshot(
      `"Made by eye: mark 1 stays here when the figure changes. Laid off from the block, it would follow."`,
    );
  });

  test('a number that comes to a measure, in either unit, but not the name itself', () => {
    const away = (distance: string) => said(step('parallel', { to: 'waist', distance, side: 'up' }));
    expect(away('3 cm')).toMatchInlineSnapshot(
      `"On this order 3 cm comes to the overlap, but it stays 3 cm on every other. If the overlap is meant, write the name."`,
    );
    expect(away('1 3/16 in')).toContain('On this order 1 3/16 in comes to the overlap');
    expect(away('3.1 cm')).toBeNull();
    expect(said(edge)).toBeNull();
  });

  test('no number that the trade lays off on every figure, nor nothing, nor an angle five degrees off', () => {
    const away = (distance: string) => said(step('parallel', { to: 'waist', distance, side: 'up' }));
    expect(away('1/4 in')).toBeNull();
    expect(said(level)).toBeNull();
    expect(away('0 mm')).toBeNull();
    const slope = room.givens.measures.get('shoulder-slope')?.value ?? 0;
    const turned = (angle: string) =>
      said(step('slant', { to: 'waist', angle, through: 'neck-point', turn: 'clockwise' }));
    expect(turned(`${(slope * 180) / Math.PI + 5} deg`)).toBeNull();
    expect(turned(`${(slope * 180) / Math.PI} deg`)).toContain('comes to the shoulder slope');
  });
});
