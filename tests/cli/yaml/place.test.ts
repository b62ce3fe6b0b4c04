import { expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { offsetOf, placeWords } from '../../../src/cli/yaml/place.ts';

const text = `checks:
  - target: notch
    marks: 2
misreadings:
  - id: too-low
    instead:
      - { verb: foot, name: notch }
`;
const document = parseDocument(text);
const data: unknown = document.toJS();

test('a place is said with entries counted from 1, and by their names', () => {
  expect(placeWords(data, ['misreadings', 0, 'instead', 0, 'verb'])).toBe(
    'misreadings 1 (too-low), instead 1 (notch), verb',
  );
  expect(placeWords(data, ['checks', 0, 'marks'])).toBe('checks 1 (notch), marks');
  expect(placeWords(data, ['checks', 5, 'marks'])).toBe('checks 6, marks');
  expect(placeWords(data, ['house'])).toBe('house');
  expect(placeWords(data, [])).toBe('');
  expect(placeWords(null, ['style', 'overlap'])).toBe('style, overlap');
});

test('a place is found in the text, or what is nearest around it', () => {
  const at = (...place: readonly (string | number)[]) => text.slice(offsetOf(document, place));
  expect(at('checks', 0, 'marks')).toMatch(/^2\n/);
  expect(at('checks', 0, 'why')).toMatch(/^target/);
  expect(offsetOf(document, ['house'])).toBe(0);
});
