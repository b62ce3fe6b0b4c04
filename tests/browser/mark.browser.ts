import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { readSet } from '../../src/exchange/read-set.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { setMark, writeSet } from '../../src/exchange/write-set.ts';
import { misread } from '../../src/grader/misreading.ts';
import { awakeAll, axe, expect, moved, test } from './fixture.ts';
import { act } from './table-hand.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');
const roll = loadExercise('roll-line');
const overlap = loadExercise('overlap');

/** A set for an invented class. */
const set: ProblemSet = {
  title: 'Week 2',
  note: '',
  exercises: [
    { exercise: 'overlap', marks: 10 },
    { exercise: 'roll-line', marks: 50 },
  ],
  figures: { each: 'anyone' },
  seed: 'autumn',
  strictness: 'workroom',
  house: {},
  feedback: 'place',
  checks: null,
  hints: true,
  due: '2026-03-06T17:00:00.000Z',
};

/** A student's hand-in of one exercise of the set, as a line. */
function line(
  student: string,
  exercise: typeof roll,
  steps: readonly Step[],
  saved = '2026-03-05T10:00:00.000Z',
): string {
  const who = { student, number: '' };
  return JSON.stringify(
    handInJson({
      ...who,
      set: setMark(set),
      exercise: exercise.id,
      order: setOrder(set, exercise, who),
      strictness: 'workroom',
      unit: 'cm',
      steps,
      shown: [],
      hints: {},
      checks: 1,
      begun: null,
      saved,
    }),
  );
}

/** A class of three: right, a misreading, and a break point too high from which the roll line is rightly ruled; and what else turns up. */
function folderOfAClass(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'class-'));
  mkdirSync(path.join(folder, 'late'));
  const [throughNeck] = roll.misreadings.filter(({ id }) => id === 'through-neck-point');
  if (!throughNeck) throw new Error('The misreading is gone.');
  const high = roll.reference.map((step) =>
    step.name === 'break-level' ? ({ ...step, distance: 'break-rise + 20 mm' } as Step) : step,
  );
  const write = (name: string, ...lines: readonly string[]) =>
    writeFileSync(path.join(folder, name), `${lines.join('\n')}\n`);
  write('week-2.set.json', writeSet(set));
  write('ilse.ndjson', line('Ilse', overlap, overlap.reference), line('Ilse', roll, roll.reference));
  write('bo.ndjson', line('Bo', roll, misread(roll.reference, throughNeck)));
  write('late/=tam.ndjson', line('=Tam', roll, high, '2026-03-09T10:00:00.000Z'));
  write('again.ndjson', line('Bo', roll, roll.reference.slice(0, 2), '2026-03-04T10:00:00.000Z'));
  write('cut.json', line('Ana', roll, roll.reference).slice(0, 200));
  return folder;
}

test('a folder is marked: the set among it, the gradebook, what is late and what cannot be read, and the command agrees', async ({
  page,
}) => {
  const folder = folderOfAClass();
  await page.goto('/desk/mark/');
  await awakeAll(page);
  await page.locator('.intray input[type=file]').nth(1).setInputFiles(folder);
  await expect(page.locator('#mark-book')).toHaveText('The gradebook of “Week 2”');
  await expect(page.locator('.book tbody tr')).toHaveCount(4);
  await expect(page.locator('.intray progress')).toHaveCount(0);
  await expect(page.locator('.book tbody tr').filter({ hasText: '=Tam' })).toContainText('late');
  const ana = page.locator('.book tbody tr').filter({ hasText: 'Ana' });
  await expect(ana).toContainText('a piece could not be read');
  await expect(ana).toContainText('not read');
  await expect(page.locator('.untaken li')).toHaveCount(1);
  await expect(page.locator('.untaken')).toContainText('cut.json');
  await expect(page.locator('.marking')).toContainText(
    'One piece more was handed in by the same students. What was saved last counts.',
  );
  const ways = page.locator('.class-ways').filter({ hasText: 'through neck point' });
  await expect(ways).toContainText('Said to Bo: “Your roll line runs through the neck point');
  await expect(page.locator('.class-picture').filter({ hasText: 'roll line' }).first()).toContainText(
    '2 of 3 are right',
  );
  await expect(page.locator('.class-view')).toContainText('The class is too small to say');
  expect(await moved(page)).toEqual([]);
  await axe(page);

  // The table is one stop for the Tab key, and is walked by arrows, to its ends and back.
  const at = page.locator('.book :focus');
  await page.getByLabel('Only those with a remark').focus();
  await page.keyboard.press('Tab');
  await expect(at).toHaveText('Student');
  await page.keyboard.press('Control+End');
  await expect(at).toHaveClass('book-sum');
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowUp');
  await expect(at).toContainText('Bo');
  await page.keyboard.press('Tab');
  await expect(at).toHaveCount(0);
  await page.keyboard.press('Shift+Tab');
  await expect(at).toContainText('Bo');

  // A name in the report opens the work, and gets the focus back.
  const name = ways.getByRole('button', { name: 'Bo' });
  await name.click();
  await expect(page.locator('#piece-title')).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(name).toBeFocused();

  // What a later piece took the place of can still be looked at, and the other from there.
  await page.locator('.earlier summary').click();
  await page.locator('.earlier button').click();
  await expect(page.locator('.piece-working li')).toHaveCount(2);
  await page.locator('.versions button', { hasText: 'counts' }).click();
  await expect(page.locator('.piece-working li')).toHaveCount(roll.reference.length);
  // Escape closes from the row of versions, too.
  await page.locator('.versions button').first().focus();
  await page.keyboard.press('Escape');
  await expect(page.locator('.earlier button')).toBeFocused();

  // Bo's roll line, opened by keyboard: the draft, its working, and what is said of it.
  const cell = page.locator('[data-cell="bo/roll-line"]');
  await cell.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('#piece-title')).toHaveText('Bo: The roll line, whole');
  await expect(page.locator('#piece-title')).toBeFocused();
  await expect(page.locator('.piece .drawing .ink--red').first()).toBeAttached();
  await expect(page.locator('.piece-note[data-status="beyond"] p')).toContainText('neck point');
  const steps = roll.reference.length;
  await expect(page.locator('.piece-working li')).toHaveCount(steps);
  await act(page, 'piece-back').click();
  await expect(page.locator('.piece-working li[data-ahead="true"]')).toHaveCount(1);
  await axe(page);
  await page.keyboard.press('Escape');
  await expect(page.locator('.piece')).toHaveCount(0);
  await expect(cell).toBeFocused();

  await page.getByRole('button', { name: /^Of 60 marks/ }).click();
  await expect(page.locator('.book tbody tr').first()).toContainText('Ilse');
  await expect(page.locator('.book')).toHaveAttribute('aria-rowcount', '5');
  await page.getByLabel('Only those with a remark').check();
  await expect(page.locator('.book tbody tr')).toHaveCount(2);
  await expect(page.locator('.book')).toHaveAttribute('aria-rowcount', '3');

  const [download] = await Promise.all([page.waitForEvent('download'), act(page, 'csv').click()]);
  expect(download.suggestedFilename()).toBe('week-2.csv');
  const csv = readFileSync(await download.path(), 'utf8');
  expect(csv).toContain('"\'=Tam"');
  // The command, whose exit status says that one piece could not be read, comes to the same to the last digit, mark of UTF-8 and all.
  expect(csv.startsWith('\uFEFF')).toBe(true);
  const words = ['src/cli/grade.ts', '--csv', '--bom', '--set', path.join(folder, 'week-2.set.json'), folder];
  expect(csv).toBe(outputOf(words));

  // Who was given more time is late no more, and it stands under the name. No time ends before the set does.
  await page.locator('.more-time summary').click();
  await page.getByLabel('may hand in until').fill('2026-03-05T10:00');
  await act(page, 'give-time').click();
  await expect(page.locator('.more-time-give')).toContainText('Write a day and an hour after Friday');
  await page.getByLabel('may hand in until').fill('2026-03-11T10:00');
  await page.locator('[name="time-whose"]').selectOption('=Tam');
  await act(page, 'give-time').click();
  const tam = page.locator('.book tbody tr').filter({ hasText: '=Tam' });
  await expect(tam).toContainText(/has time until Wednesday,? 11 March 2026/);
  await expect(tam).not.toContainText('late');
  await act(page, 'take-time').click();
  await expect(tam).toContainText('late');

  // The desk is cleared by two presses of one mind: whoever turns to something else has thought better of it.
  const sure = page.getByText('Press again to clear it.');
  for (const turn of [() => page.keyboard.press('Escape'), () => page.locator('#mark-class').click()]) {
    await act(page, 'clear').click();
    await expect(sure).toBeVisible();
    await turn();
    await expect(sure).toHaveCount(0);
  }
  await act(page, 'clear').click();
  await expect(page.locator('.book')).toBeVisible();

  // What was cut off is laid down whole, and is told of no more.
  const whole = {
    name: 'ana (1).json',
    mimeType: 'application/json',
    buffer: Buffer.from(line('Ana', roll, roll.reference)),
  };
  const photo = { name: 'photo.jpg', mimeType: 'image/jpeg', buffer: Buffer.from([255, 216, 0]) };
  await page.locator('.intray input[type=file]').first().setInputFiles([whole, photo]);
  await expect(page.locator('.untaken li')).toContainText(['photo.jpg']);
  // What was never anybody's work the teacher takes off.
  await act(page, 'leave-out').click();
  await expect(page.locator('.untaken')).toHaveCount(0);
  await expect(page.locator('#mark-book')).toBeFocused();
  await page.getByLabel('Only those with a remark').uncheck();
  await expect(ana.locator('.book-sum')).toHaveText('50');
  await expect(ana).not.toContainText('not read');
});

function outputOf(words: readonly string[]): string {
  try {
    return execFileSync(process.execPath, words, { cwd: ROOT, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  } catch (error) {
    return (error as { readonly stdout: string }).stdout;
  }
}

test('a thousand hand-ins can be stopped, and the page answers meanwhile', { tag: ['@desktop', '@phone'] }, async ({
  page,
}) => {
  expect(readSet(writeSet(set), exerciseNames()).ok).toBe(true);
  await page.goto('/desk/mark/');
  await awakeAll(page);
  // Whole collars: smaller drafts would be marked before a hand could stop them.
  const collar = loadExercise('collar-double');
  const lines = Array.from({ length: 1000 }, (_, at) => line(`Student ${at}`, collar, collar.reference));
  await page
    .locator('.intray input[type=file]')
    .first()
    .setInputFiles({ name: 'class.ndjson', mimeType: 'application/x-ndjson', buffer: Buffer.from(lines.join('\n')) });
  await expect(page.locator('.book tbody tr').first()).toBeVisible();
  await page.getByLabel('Only names or numbers with').fill('student 1');
  await act(page, 'cancel').click();
  await expect(page.locator('.intray progress')).toHaveCount(0);
  await expect(page.locator('.book tbody tr').first()).toContainText('Student 1');
});

test('a set that turns up after the hand-ins marks them again, and what is laid down twice counts once', async ({
  page,
}) => {
  const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.goto('/desk/mark/');
  await awakeAll(page);
  const files = page.locator('.intray input[type=file]').first();
  await files.setInputFiles(file('ilse.ndjson', line('Ilse', roll, roll.reference)));
  await expect(page.locator('.book-sum')).toHaveText(String(sumOf(roll)));
  await files.setInputFiles(file('week-2.set.json', writeSet(set)));
  await expect(page.locator('#mark-book')).toHaveText('The gradebook of “Week 2”');
  await expect(page.locator('.book-sum')).toHaveText('50');
  await files.setInputFiles(file('copy.ndjson', line('Ilse', roll, roll.reference)));
  await expect(page.locator('.marking')).toContainText('One piece was laid down a second time, and counts once.');
  await expect(page.locator('.book-sum')).toHaveText('50');
});

test('a folder that is dropped and a file that is chosen before the desk is awake are marked, and drafts that are alike are asked about', async ({
  page,
}) => {
  const folder = mkdtempSync(path.join(tmpdir(), 'dropped-'));
  mkdirSync(path.join(folder, 'class'));
  const steps: readonly Step[] = [
    { verb: 'pencil', name: 'low', at: [-24.7, 37.3], answers: 'break-point' },
    { verb: 'pencil', name: 'high', at: [41.2, 391.6], answers: 'stand-point' },
  ];
  for (const student of ['Ana', 'Bo'])
    writeFileSync(path.join(folder, 'class', `${student}.json`), line(student, roll, steps));
  let wake = (): void => undefined;
  const awake = new Promise<void>((resolve) => {
    wake = resolve;
  });
  await page.route('**/_astro/MarkingDesk*.js', async (route) => {
    await awake;
    await route.continue();
  });
  await page.goto('/desk/mark/');
  await expect(act(page, 'choose')).toBeDisabled();
  const set2 = { name: 'week-2.set.json', mimeType: 'application/json', buffer: Buffer.from(writeSet(set)) };
  await page.locator('.intray input[type=file]').first().setInputFiles(set2);
  const box = await page.locator('.intray').boundingBox();
  const hand = await page.context().newCDPSession(page);
  const files = [path.join(folder, 'class')];
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
    await hand.send('Input.dispatchDragEvent', {
      type,
      x: (box?.x ?? 0) + 30,
      y: (box?.y ?? 0) + 30,
      data: { items: [], files, dragOperationsMask: 1 },
    });
  wake();
  await expect(page.locator('#mark-book')).toHaveText('The gradebook of “Week 2”');
  await expect(page.locator('.book tbody tr')).toHaveCount(2);
  await expect(page.locator('.alike')).toContainText('2 students drew for different figures');
  await page.locator('.alike').getByRole('button', { name: 'Ana' }).click();
  await expect(page.locator('#piece-title')).toHaveText('Ana: The roll line, whole');
  await expect(page.locator('.piece-remarks')).toContainText('alike to the draft of Bo');

  // A class of forty is seen whole, with its heads in sight; of a larger one the table slides.
  const more = (count: number) =>
    Array.from({ length: count }, (_, at) => line(`Student ${at}`, overlap, overlap.reference)).join('\n');
  const laid = (count: number) => ({ name: 'more.ndjson', mimeType: 'text/plain', buffer: Buffer.from(more(count)) });
  const rows = page.locator('.book tbody tr');
  const hidden = () => page.locator('.book-frame').evaluate((frame) => frame.scrollHeight - frame.clientHeight);
  await page.locator('.intray input[type=file]').first().setInputFiles(laid(38));
  await expect(rows).toHaveCount(40);
  expect(await hidden()).toBeLessThan(2);
  await rows.last().scrollIntoViewIfNeeded();
  await expect(page.getByRole('columnheader', { name: 'Student' })).toBeInViewport();
  await page.locator('.intray input[type=file]').first().setInputFiles(laid(39));
  await expect(rows).toHaveCount(41);
  expect(await hidden()).toBeGreaterThan(100);
  // On paper the heads stay at the top of the table.
  await page.emulateMedia({ media: 'print' });
  expect(await hidden()).toBeLessThan(2);
  expect(await page.locator('.book thead').evaluate((heads) => getComputedStyle(heads).position)).toBe('static');
});

function sumOf({ checks }: typeof roll): number {
  return checks.reduce((sum, { marks }) => sum + marks, 0);
}
