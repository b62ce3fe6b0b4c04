import { expect, test } from 'vitest';
import { keepStops } from '../../src/cli/keep-stops.ts';

const word = (text: string) => `<button type="button" class="term" popovertarget="term-${text}">${text}</button>`;

test('a stop after a word of the trade is kept beside it', () => {
  expect(keepStops(`<p>the ${word('lapel')}, and the ${word('notch')}.</p>`)).toBe(
    `<p>the <span class="with-stop">${word('lapel')},</span> and the <span class="with-stop">${word('notch')}.</span></p>`,
  );
  expect(keepStops(`(the ${word('fall')}), so`)).toBe(`(the <span class="with-stop">${word('fall')}),</span> so`);
});

test('a word that a space or a word follows stays as it is, and so does another button', () => {
  const page = `<p>${word('lapel')} and <strong>${word('notch')}</strong> <button type="button" class="button">x</button>.</p>`;
  expect(keepStops(page)).toBe(page);
});
