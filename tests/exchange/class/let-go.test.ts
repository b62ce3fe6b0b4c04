import { expect, test } from 'vitest';
import { lettingGo } from '../../../src/exchange/class/let-go.ts';

const piece = (held: number, tried: number) => ({ row: { otherFigures: { held, tried } } });

test('a draft lets go that holds on fewer figures than it was tried on; one that was tried on none does not', () => {
  const [some, none] = [piece(4, 6), piece(0, 6)];
  expect(lettingGo([piece(6, 6), some, piece(0, 0), none])).toEqual([some, none]);
});
