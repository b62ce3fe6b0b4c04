import { expect, test } from 'vitest';
import { refusedAt } from '../../../../src/desk/marking/intake/refused.ts';
import { saidAlike } from '../../../../src/desk/marking/intake/said-alike.ts';
import { sayFor } from '../../../../src/table/say.ts';
import { message } from '../../../../src/words/message.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

const say = sayFor({ language: 'en', unit: 'cm' });

test('what one wrong set brings stands together, and what could not be read each by itself', () => {
  const strange = (where: string, name: string) => ({
    ...refusedAt(where, message('files.no-exercise', { name })),
    handIn: { ...rightOverlap, exercise: name },
  });
  const cut = (where: string) => refusedAt(where, message('files.not-json'));
  const all = [
    strange('a', 'welt'),
    cut('b'),
    strange('c', 'vent'),
    strange('d', 'welt'),
    cut('e'),
    strange('f', 'welt'),
  ];
  const places = saidAlike(all, say).map(({ first, others }) => [first.where, ...others.map(({ where }) => where)]);
  expect(places).toEqual([['a', 'd', 'f'], ['b'], ['c'], ['e']]);
  expect(saidAlike([], say)).toEqual([]);
});
