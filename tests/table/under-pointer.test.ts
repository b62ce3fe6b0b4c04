import { expect, test } from 'vitest';
import type { Pointed } from '../../src/table/model/point-at.ts';
import { type Under, UnderPointer } from '../../src/table/under-pointer.ts';

const onEdge: Pointed = { field: 'one', value: 'edge', caught: ['edge'], at: null };

function told(pointer: UnderPointer): Under[] {
  const all: Under[] = [];
  pointer.watch((under) => all.push(under));
  return all;
}

test('what is caught lights up, and goes out when the pointer leaves', () => {
  const pointer = new UnderPointer();
  const heard = told(pointer);
  pointer.point(onEdge);
  pointer.point(null);
  expect(heard).toEqual([
    { pointed: onEdge, lit: ['edge'] },
    { pointed: null, lit: [] },
  ]);
});

test('an entry of a list lights what it names, and what is pointed at stays', () => {
  const pointer = new UnderPointer();
  pointer.point(onEdge);
  pointer.light('level');
  expect(pointer.now()).toEqual({ pointed: onEdge, lit: ['level'] });
  pointer.light(null);
  expect(pointer.now()).toEqual({ pointed: onEdge, lit: [] });
});

test('a move over bare paper is not told where nothing was pointed at before', () => {
  const pointer = new UnderPointer();
  const heard = told(pointer);
  pointer.point(null);
  pointer.point(null);
  expect(heard).toEqual([]);
});

test('one who has stopped watching is not told', () => {
  const pointer = new UnderPointer();
  const heard: Under[] = [];
  const stop = pointer.watch((under) => heard.push(under));
  stop();
  pointer.point(onEdge);
  expect(heard).toEqual([]);
});
