import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { gradeCommand } from '../../src/cli/grade-command.ts';
import { takeIn } from '../../src/desk/marking/intake/intake.ts';
import { type Entry, gradebookOf } from '../../src/exchange/class/gradebook.ts';
import { gradebookCsv } from '../../src/exchange/class/gradebook-csv.ts';
import { writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { runHere } from '../cli/run-command.ts';
import { rightOverlap } from './hand-ins.ts';

const text = writeHandIn({ ...rightOverlap, student: 'René Dufour', number: '', set: null });
/** The same file as a program saves it that knows Windows-1252 only: é is the one byte E9 there, as in Latin-1 (ISO 8859-1). */
const bytes = Buffer.from(text, 'latin1');
const folder = mkdtempSync(path.join(tmpdir(), 'latin-'));
afterAll(() => rmSync(folder, { recursive: true }));
const reader = { language: 'en', unit: 'cm' } as const;

async function bookOf(content: Buffer): Promise<string> {
  const file = new Blob([new Uint8Array(content)]);
  const files = [{ name: 'rene.json', size: file.size, text: () => file.text(), head: () => file.text() }];
  const entries: Entry[] = [];
  for await (const one of takeIn({ files, pieces: [] }, null, loadExercise, ['overlap']))
    if (one.kind === 'taken' && one.taken.ok) entries.push(one.taken.entry);
  return gradebookCsv(gradebookOf(entries, null), reader);
}

test('on the desk a name that lost a letter is marked, with a remark that says so, in no set', async () => {
  expect(await bookOf(bytes)).toContain('a letter of the name is lost, because the file is not in UTF-8');
  expect(await bookOf(Buffer.from(text, 'utf8'))).not.toContain('a letter of the name is lost');
});

test.each(['--csv', '--json', '--summary'])(
  'the command says of %s on standard error that a letter is lost',
  async (form) => {
    const file = path.join(folder, 'rene.json');
    writeFileSync(file, bytes);
    const { err, out, status } = await runHere(gradeCommand, ['--cores', '1', form, file]);
    expect(err).toContain('rene.json: Ren\uFFFD Dufour: a letter of the name is lost');
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(status).toBe(0);
    if (form === '--csv') expect(out).toContain('overlap: a letter of the name is lost');
  },
);
