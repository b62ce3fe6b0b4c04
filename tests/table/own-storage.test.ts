import { expect, test } from 'vitest';
import { ownStorage } from '../../src/table/store/own-storage.ts';

function place() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      kept.set(key, text);
    },
    removeItem: (key: string) => {
      kept.delete(key);
    },
  };
}

test('a set that is only looked at reads nothing of a student’s own, and leaves nothing there', () => {
  const [own, apart] = [place(), place()];
  let hash = '#in=0a1b2c3d';
  const storage = ownStorage(
    () => hash,
    () => own,
    () => apart,
  );
  storage.write('name', 'Ilse');
  hash = '#try=0a1b2c3d';
  expect(storage.read('name')).toBeNull();
  storage.write('name', 'Somebody');
  storage.write('draft', 'tried');
  expect(storage.read('name')).toBe('Somebody');
  storage.remove('name');
  hash = '';
  expect([storage.read('name'), storage.read('draft')]).toEqual(['Ilse', null]);
  expect([...apart.kept.keys()]).toEqual(['draft']);
});

test('what could not be kept of a trial is found in no student’s work either', () => {
  const refuses = {
    getItem: () => null,
    setItem: () => {
      throw new Error('no');
    },
    removeItem: () => undefined,
  };
  let hash = '#try=0a1b2c3d';
  const storage = ownStorage(
    () => hash,
    () => place(),
    () => refuses,
  );
  expect(storage.write('name', 'Somebody')).toBe('forbidden');
  expect(storage.read('name')).toBe('Somebody');
  hash = '#in=0a1b2c3d';
  expect(storage.read('name')).toBeNull();
});
