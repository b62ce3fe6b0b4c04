import { describe, expect, test } from 'vitest';
import { lookUp } from '../../src/course/authoring-error.ts';
import { bothUnits, lengthFrom } from '../../src/course/both-units.ts';
import { orderOf, sceneSheet } from '../../src/course/figures/scene.ts';
import { inOrder } from '../../src/course/in-order.ts';
import { mentions } from '../../src/course/mentions.ts';
import { termNaming } from '../../src/course/namings.ts';
import { lessonSchema } from '../../src/course/schema/lesson.ts';
import { sourceSchema } from '../../src/course/schema/source.ts';
import { termSchema } from '../../src/course/schema/term.ts';

const known = new Map([
  ['break-point', 1],
  ['roll-line', 2],
]);

describe('what an author is told', () => {
  test('of a name that is nearly right', () => {
    expect(() => lookUp(known, 'brake-point', termNaming)).toThrowErrorMatchingInlineSnapshot(
      `[AuthoringError: <Term of="…"> names “brake-point”, and there is no such entry in content/glossary/en.yaml. Did you mean “break-point”?]`,
    );
  });

  test('of a name there is nothing like', () => {
    expect(() => lookUp(known, 'gorge', termNaming)).toThrowErrorMatchingInlineSnapshot(
      `[AuthoringError: <Term of="…"> names “gorge”, and there is no such entry in content/glossary/en.yaml. There are: break-point, roll-line.]`,
    );
  });

  test('of a length without a unit', () => {
    expect(() => lengthFrom('1 1/4')).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: “1 1/4” is not a length. Write it with its unit, for example “1 1/4 in” or “32 mm”.]',
    );
    expect(() => lengthFrom('one inch')).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: “one inch” is not a length. “one” carries its own unit. Take out the inch after it.]',
    );
  });

  test('of a figure whose step cannot be carried out', () => {
    const box = { min: { x: 0, y: 0 }, max: { x: 1, y: 1 } };
    const bare = { order: orderOf('amara', {}), shows: [], labels: [], box };
    const steps = [{ verb: 'cross', name: 'nowhere', one: 'waist', other: 'collarbone-level' }] as const;
    expect(() => sceneSheet({ id: 'broken', ...bare, steps })).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: Step 1 (nowhere) of the figure “broken” cannot be carried out. Waist and collarbone level run parallel, so they do not cross. Choose lines that lean toward each other.]',
    );
  });

  test('of a figure for nobody', () => {
    expect(() => orderOf('nobody', {})).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: A figure is for “nobody”, and there is no such person in src/garment/people.ts.]',
    );
  });

  test('of a head that lacks something, or has too much', () => {
    const faults = (schema: typeof lessonSchema | typeof termSchema | typeof sourceSchema, head: unknown) =>
      schema.safeParse(head).error?.issues.map(({ message }) => message);
    expect(faults(lessonSchema, { summary: 'x', exercises: [] })).toMatchInlineSnapshot(`
      [
        "A lesson needs a title: title: The overlap",
        "A lesson needs its place in the course, a whole number from 1: order: 1",
        "A lesson needs a lead, the sentence under its title: lead: …",
        "A lesson lists at least one exercise, so that what was read is also drawn.",
        "Unrecognized key: "summary"",
      ]
    `);
    expect(faults(termSchema, {})).toMatchInlineSnapshot(`
      [
        "A glossary entry needs the word itself: term: break point",
        "A glossary entry says what the word means, in a sentence or two: means: …",
      ]
    `);
    expect(faults(sourceSchema, {})).toMatchInlineSnapshot(`
      [
        "A source needs the short name it is called by: short: MTOC 1949",
        "A source needs its whole citation: author, title, year, place: full: …",
        "A source says what it is used for, in a sentence: use: …",
      ]
    `);
  });
});

test('a length reads in the reader’s unit first, and breaks between its halves alone', () => {
  const [cm, inches] = ['3.2\u00a0cm', '1\u00a01/4\u00a0in'];
  expect(bothUnits(lengthFrom('1 1/4 in'))).toEqual({ cm: `${cm} (${inches})`, in: `${inches} (${cm})` });
});

test('mentions are read off a text once each, in order', () => {
  const text =
    'a <Term of="overlap">b</Term> <Cite of="asdp" at="p. 1" /> <Term of="lapel">c</Term> <Term of="overlap">d</Term>';
  expect(mentions(text, 'Term')).toEqual(['overlap', 'lapel']);
  expect(mentions(text, 'Cite')).toEqual(['asdp']);
  expect(mentions('', 'Term')).toEqual([]);
});

test('lessons are put in the order of the course', () => {
  expect(inOrder([{ data: { order: 2 } }, { data: { order: 1 } }])).toEqual([
    { data: { order: 1 } },
    { data: { order: 2 } },
  ]);
});
