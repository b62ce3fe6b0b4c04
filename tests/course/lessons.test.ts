import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { faults } from '../../src/course/figures/faults.ts';
import { scenes } from '../../src/course/figures/index.ts';
import { mentions } from '../../src/course/mentions.ts';
import { lessons as known } from '../../src/grader/lessons.ts';
import { about, lessons, sources, terms } from './read-content.ts';

const EXERCISES = path.resolve(import.meta.dirname, '../../exercises');

test('the lessons written are those an exercise may belong to, in the same order', () => {
  const inOrder = [...lessons].sort((a, b) => a.head.order - b.head.order);
  expect(inOrder.map(({ id }) => id)).toEqual(known);
  expect(inOrder.map(({ head }) => head.order)).toEqual(inOrder.map((_, index) => index + 1));
});

describe.each(lessons)('the lesson on $id', ({ head, body }) => {
  test('has every part a lesson has', () => {
    const parts = [...body.matchAll(/^## (.*)$/gm)].map((match) => match[1]);
    expect(parts).toEqual(['What it is for', 'The rule', 'A worked example', 'What goes wrong', 'Check yourself']);
    expect(mentions(body, 'Live').length).toBeGreaterThanOrEqual(2);
    expect(mentions(body, 'Pair').length).toBeGreaterThanOrEqual(2);
    expect(mentions(body, 'Worked')).toHaveLength(1);
    expect(body).toContain('<Caution>');
    expect(body).toMatch(/teacher in the room/);
  });

  test('names only figures, pairs, terms and sources there are', () => {
    const unknown = [
      ...mentions(body, 'Live').filter((id) => !scenes.has(id)),
      ...mentions(body, 'Worked').filter((id) => !scenes.has(id)),
      ...mentions(body, 'Pair').filter((id) => !faults.has(id)),
      ...mentions(body, 'Term').filter((id) => !terms.has(id)),
      ...mentions(body, 'Cite').filter((id) => !sources.has(id)),
    ];
    expect(unknown).toEqual([]);
  });

  test('names each trade word it explains once', () => {
    const words = [...body.matchAll(/<Term of="([^"]+)"/g)].map((match) => match[1]);
    expect(words).toEqual([...new Set(words)]);
  });

  test('leads to exercises there are', () => {
    expect(head.exercises.filter((id) => !existsSync(path.join(EXERCISES, `${id}.yaml`)))).toEqual([]);
  });

  test('types no length by hand: every one is worked out in both units', () => {
    const bare = body
      .replace(/<(?:Len|RuleTable)\b[^>]*\/>/g, '')
      .replace(/\{[^{}]*\}/g, '')
      .match(/\d[\d /.½¼¾]*\s?(?:mm|cm|in|inch(?:es)?)\b/g);
    expect(bare ?? []).toEqual([]);
  });

  test('asks questions with one right answer each, and a reason for every answer', () => {
    const questions = [...body.matchAll(/<Question\b[\s\S]*?<\/Question>/g)].map((match) => match[0]);
    expect(questions.length).toBeGreaterThanOrEqual(3);
    for (const question of questions) {
      const answers = [...question.matchAll(/<Answer says="[^"]+"( right)?>([\s\S]*?)<\/Answer>/g)];
      expect(answers.length).toBeGreaterThanOrEqual(2);
      expect(answers.filter((answer) => answer[1])).toHaveLength(1);
      for (const answer of answers) expect(answer[2]?.trim().length).toBeGreaterThan(20);
    }
  });
});

test('every figure and every pair stands in a lesson, but for the one of the first page', () => {
  const all = lessons.map(({ body }) => body).join('\n');
  const used = new Set([...mentions(all, 'Live'), ...mentions(all, 'Worked'), ...mentions(all, 'Pair'), 'home-roll']);
  expect([...scenes.keys(), ...faults.keys()].filter((id) => !used.has(id))).toEqual([]);
});

test('the exercises that a lesson lists belong to it', () => {
  const belonging = readdirSync(EXERCISES).flatMap((file) => {
    const lesson = /^lesson: (.+)$/m.exec(readFileSync(path.join(EXERCISES, file), 'utf8'))?.[1];
    return file.endsWith('.yaml') && lesson ? [{ lesson, id: path.parse(file).name }] : [];
  });
  for (const { id, head } of lessons)
    expect(belonging.filter((one) => head.exercises.includes(one.id)).map(({ lesson }) => lesson)).toEqual(
      head.exercises.map(() => id),
    );
});

test('every source is cited where it is used', () => {
  const all = [...lessons.map(({ body }) => body), about].join('\n');
  expect([...sources.keys()].filter((id) => !mentions(all, 'Cite').includes(id))).toEqual([]);
});

test('glossary entries lead to entries there are', () => {
  const astray = [...terms].flatMap(([id, { see }]) => see.filter((other) => !terms.has(other) || other === id));
  expect(astray).toEqual([]);
});
