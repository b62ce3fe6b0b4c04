import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exerciseNames } from '../../src/cli/exercises.ts';
import { refusalOf } from '../../src/exchange/refusal.ts';
import { LINK_LENGTH, readSetLink, setLink } from '../../src/exchange/set-link.ts';
import { setJson } from '../../src/exchange/write-set.ts';
import { say } from '../../src/words/say.ts';
import { exercises, weekTwo } from './sets.ts';

const reader = { language: 'en', unit: 'cm' } as const;

/** A link packed by zlib, which is not what packs ours. */
const packedByZlib = (text: string): string => `#set=${deflateRawSync(text).toString('base64url')}`;

function hashOfWeekTwo(): string {
  const link = setLink(weekTwo);
  if (!link.ok) throw new Error('too long');
  return link.hash;
}

const refusal = (hash: string): string => {
  const read = readSetLink(hash, exercises);
  return read.ok ? 'not refused' : say(refusalOf(read.faults), reader);
};

describe('the link of a set', () => {
  test('carries the whole set', () => {
    expect(readSetLink(`#${hashOfWeekTwo()}`, exercises)).toEqual({ ok: true, set: weekTwo });
  });

  test('is RFC 1951 in the letters of RFC 4648: what zlib packs, it reads', () => {
    expect(readSetLink(packedByZlib(JSON.stringify(setJson(weekTwo))), exercises)).toEqual({ ok: true, set: weekTwo });
    expect(hashOfWeekTwo()).toMatch(/^set=[A-Za-z0-9_-]+$/);
  });

  test('has room for every exercise of the course and a note of a few lines', () => {
    const all = exerciseNames().map((exercise) => ({ exercise, marks: 10 }));
    const note =
      'Work through them in order. Take your time over the roll line. Thursday: bring muslin and a 5 cm rule.';
    expect(setLink({ ...weekTwo, exercises: all, note }).ok).toBe(true);
  });

  test('is not made where a program might cut it, and says so', () => {
    const letters = fc.sample(fc.string({ minLength: 2000, maxLength: 2000, unit: 'grapheme-ascii' }), {
      seed: 7,
      numRuns: 1,
    });
    const link = setLink({ ...weekTwo, note: letters.join('') });
    expect(link.ok ? '' : say(link.message, reader)).toMatch(
      /^This set is too long for a link: it would have [\d,]+ characters, and some programs cut addresses longer than 1,900\./,
    );
    expect(hashOfWeekTwo().length).toBeLessThanOrEqual(LINK_LENGTH);
  });
});

describe('a link that is no set', () => {
  const whole = hashOfWeekTwo();
  test.each([
    ['nothing', '#'],
    ['no set', '#exercises'],
    ['cut off', whole.slice(0, -20)],
    ['a letter outside the alphabet', whole.replace(/.$/, '!')],
    ['another document', packedByZlib('{"format": "gorgeline hand-in"}')],
    ['words', packedByZlib('Dear class,')],
    ['a bomb: a little that unfolds to a great deal', packedByZlib(' '.repeat(50_000_000))],
    ['endless', `#set=${'A'.repeat(200_000)}`],
  ])('%s', (_, hash) => {
    expect(refusal(hash)).toMatchSnapshot();
  });

  test('whatever it is, is read or refused', () => {
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.string({ maxLength: 6 }), fc.nat(6), (at, letters, gone) => {
        const read = readSetLink(whole.slice(0, at) + letters + whole.slice(at + gone), exercises);
        if (!read.ok) expect(say(refusalOf(read.faults), reader)).toMatch(/^\S.*\S$/s);
      }),
    );
  });
});
