import { beforeAll, describe, expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { classDrawing } from '../../../../src/desk/marking/class/class-drawing.ts';
import { classSentences, whyNoChalk } from '../../../../src/desk/marking/class/class-sentences.ts';
import { classSheet } from '../../../../src/desk/marking/class/class-sheet.ts';
import { classTarget } from '../../../../src/desk/marking/class/class-target.ts';
import { nameInPicture } from '../../../../src/desk/marking/class/name-in-picture.ts';
import type { Sound } from '../../../../src/desk/marking/intake/taken.ts';
import type { Step } from '../../../../src/drafting/step.ts';
import type { Footing } from '../../../../src/exchange/class/laid/footing.ts';
import type { UnderSheet } from '../../../../src/exchange/class/laid/under-sheet.ts';
import { misread } from '../../../../src/grader/misreading.ts';
import { holds } from '../../../../src/table/drawing/box.ts';
import { say } from '../../../../src/words/say.ts';
import { piecesOf } from '../class-pieces.ts';

const roll = loadExercise('roll-line');
const reader = { language: 'en', unit: 'cm' } as const;
const throughNeck = roll.misreadings.find(({ id }) => id === 'through-neck-point');
const wrong = throughNeck ? misread(roll.reference, throughNeck) : [];
const high: readonly Step[] = roll.reference.map((step) =>
  step.name === 'break-level' ? ({ ...step, distance: '20 mm + break-rise' } as Step) : step,
);

let pieces: readonly Sound[];
let under: UnderSheet;
beforeAll(async () => {
  const { reference } = roll;
  pieces = await piecesOf(roll, { Ana: reference, Bo: wrong, Cem: wrong, Dai: high, Efe: reference.slice(0, 1) });
  const sheet = classSheet(roll, pieces);
  if (!sheet) throw new Error('The class has no sheet.');
  under = sheet;
});

function footingOf(target: string): Footing {
  const footing = under.footings.get(target);
  if (!footing) throw new Error(`${target} has no footing.`);
  return footing;
}

function drawn(target: string) {
  const laid = { under, shows: roll.shows, footing: footingOf(target), half: 3, unit: 'cm' } as const;
  return classDrawing({ ...laid, answers: classTarget(pieces, target) });
}

const told = (target: string): string =>
  classSentences(classTarget(pieces, target), footingOf(target), pieces.length)
    .map((sentence) => say(sentence, reader))
    .join(' ');

describe('a class in one picture', () => {
  test('has a line for every answer that can be laid there, the right one dotted, and the chalk under it', () => {
    const { parts, box } = drawn('roll-line');
    const lines = parts.filter((part) => part.kind === 'line' && part.tone === 'class');
    expect(lines).toHaveLength(4);
    for (const line of lines) if (line.kind === 'line') expect(holds(box, line.from) && holds(box, line.to)).toBe(true);
    expect(parts.filter(({ tone, kind }) => tone === 'right' && kind !== 'band')).toHaveLength(1);
    expect(parts.filter(({ kind }) => kind === 'band')).toMatchObject([{ half: 3 }]);
  });

  test('gathers those who went the same wrong way, and writes it beside them with how many they are', () => {
    const labels = drawn('roll-line').labels.map(({ words }) => say(words, reader));
    expect(labels).toContain('through neck point: 2');
    expect(classTarget(pieces, 'roll-line').gathered).toMatchObject([{ way: 'through-neck-point' }]);
    expect(labels).toContain('right: 2');
  });

  test('counts with another whoever lies too near to be named too, and shortens a long name', async () => {
    const raised = (mm: number): readonly Step[] =>
      roll.reference.map((step) =>
        step.name === 'break-level' ? ({ ...step, distance: `${mm} mm + break-rise` } as Step) : step,
      );
    const all = await piecesOf(roll, {
      ...{ Ana: roll.reference, 'Maximiliana Featherstonehaugh': raised(30), Bo: raised(30.4), Cem: raised(-20) },
    });
    const laid = { under, shows: roll.shows, footing: footingOf('break-point'), half: 3, unit: 'cm' } as const;
    const { labels, parts } = classDrawing({ ...laid, answers: classTarget(all, 'break-point') });
    const written = labels.filter(({ tone }) => tone === 'made').map(({ words }) => say(words, reader));
    expect(written).toEqual(['Bo + 1', 'Cem']);
    const who = (student: string, number = '') => nameInPicture({ who: { student, number } });
    expect([who('Maximiliana Featherstonehaugh'), who('Ana Lee'), who(' ', '17')]).toEqual([
      'Maximiliana F.',
      'Ana Lee',
      '17',
    ]);
    expect(who('Featherstonehaughsworth')).toBe('Featherstonehau…');
    // Each is drawn all the same.
    expect(parts.filter(({ group }) => group?.startsWith('lone'))).toHaveLength(3);
  });

  test('says how many, how far off, which way, and where some lie together', async () => {
    // Where two are right and two are not, nobody lies half way.
    expect(told('roll-line')).toMatch(
      /^4 of 5 can be laid here; 2 are right\. Half of them or more lie on the right place; the furthest lies .+ off\. 2 lie where “through neck point” comes out\.$/,
    );
    const wronger = await piecesOf(roll, { Ana: roll.reference, Bo: wrong, Cem: wrong });
    const [many, far] = classSentences(classTarget(wronger, 'roll-line'), footingOf('roll-line'), 3);
    expect(many && say(many, reader)).toBe('One of 3 is right.');
    expect(far && say(far, reader)).toMatch(/^Half of them lie within 3\.\d cm of the right place; the furthest/);
    expect(told('break-point')).toBe(
      '4 of 5 can be laid here; 3 are right. Half of them or more lie on the right place; the furthest lies 2 cm off.',
    );
    expect(told('overlap-edge')).toBe('All 5 are right.');
  });

  test('says which way the middle of the class lies, and at which end of a line where it leans', async () => {
    const wide = roll.reference.map((step) =>
      step.name === 'overlap-edge' ? ({ ...step, distance: '8 mm + overlap' } as Step) : step,
    );
    const wider = await piecesOf(roll, { Ana: wide, Bo: wide, Cem: roll.reference });
    const of = (all: readonly Sound[], target: string): readonly string[] =>
      classSentences(classTarget(all, target), footingOf(target), 3).map((sentence) => say(sentence, reader));
    const sentences = of(wider, 'overlap-edge');
    expect(of(await piecesOf(roll, { Ana: wrong, Bo: wrong, Cem: roll.reference }), 'roll-line')[2]).toMatch(
      /^At the stand point the middle of the class lies .+ too far toward the shoulder tip\.$/,
    );
    expect(sentences).toContain('The middle of the class lies 0.8 cm too far toward the front edge.');
  });

  test('says one distance of one answer, and of answers that are as far off', async () => {
    const saidOf = async (...names: readonly string[]): Promise<string> => {
      const all = await piecesOf(roll, Object.fromEntries(names.map((name) => [name, high])));
      return classSentences(classTarget(all, 'break-point'), footingOf('break-point'), names.length)
        .map((sentence) => say(sentence, reader))
        .join(' ');
    };
    expect(await saidOf('Dai')).toContain('It lies 2 cm off the right place.');
    expect(await saidOf('Dai', 'Eli')).toContain('All of them lie 2 cm off the right place.');
  });

  test('says why there is no chalk', () => {
    const why = (exercise: string, target: string) =>
      say(whyNoChalk(loadExercise(exercise), target, new Map()), reader);
    expect(why('plan-muslin', 'side-cut')).toContain('leaves a range');
    expect(why('lapel-worn', 'lapel-edge-worn')).toContain('leaves a range');
    expect(why('edge-ease', 'fall-line')).toContain('single places');
    // The neck edge has one right run, and so much room beside it: no range of right ones.
    expect(why('neck-edge', 'collar-neck-edge')).toBe(
      'Between its marks it may run up to 0.6 cm beside the dotted line, which is left to taste; so no chalk is laid along it.',
    );
  });

  test('is of nobody where there is no work', () => {
    expect(classSheet(roll, [])).toBeNull();
    expect(classSentences(classTarget([], 'roll-line'), footingOf('roll-line'), 0)).toHaveLength(1);
  });
});
