import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { exerciseNames } from '../../src/cli/exercises.ts';
import { readSet } from '../../src/exchange/read-set.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { readSetLink, setLink } from '../../src/exchange/set-link.ts';
import { setMark } from '../../src/exchange/write-set.ts';
import { axe, expect, moved, type Page, test } from './fixture.ts';
import { act, awakeTable, drawStep } from './table-hand.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');

/** A set for an invented class. */
const set: ProblemSet = {
  title: 'Week 2: overlap',
  note: 'Bring a question on Thursday.',
  exercises: [
    { exercise: 'overlap', marks: 10 },
    { exercise: 'break-point', marks: 20 },
  ],
  figures: { each: 'women' },
  seed: 'autumn',
  strictness: 'workroom',
  house: {},
  feedback: 'verdict',
  checks: 1,
  hints: false,
  due: '2030-03-06T17:00:00.000Z',
};

function linkTo(one: ProblemSet): string {
  const link = setLink(one);
  if (!link.ok) throw new Error('The set is too long for a link.');
  return `/set/#${link.hash}`;
}

async function downloaded(page: Page, what: string): Promise<{ name: string; file: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act(page, what).click()]);
  const file = await download.path();
  return { name: download.suggestedFilename(), file, text: readFileSync(file, 'utf8') };
}

test('a teacher makes a set: the file and the link are the same set, and it is kept', async ({ page }) => {
  await page.goto('/desk/set/');
  await expect(act(page, 'save-set')).toBeDisabled();
  await page.getByLabel('Title').fill('Week 2: overlap');
  await page.getByLabel('A word to the class').fill('Bring a question on Thursday.');
  await page.locator('.desk-pool').getByRole('checkbox', { name: 'Break level and break point' }).check();
  await page.locator('.desk-pool').getByRole('checkbox', { name: 'Overlap edge, single-breasted' }).check();
  await page.getByRole('button', { name: '“Overlap edge, single-breasted” earlier' }).click();
  await page.getByLabel('Marks for “Break level and break point”').fill('20');
  await page.getByLabel('The jackets are drafted for').selectOption('each');
  await page.getByLabel('From the survey of').selectOption('women');
  await page.getByLabel('Marked by the tolerances of').selectOption('sample-room');
  await expect(
    page.locator('.desk-note', { hasText: 'within 1.5 mm, a walked seam within 0.75 mm, a square within 0.5°.' }),
  ).toBeVisible();
  await page.getByLabel('Marked by the tolerances of').selectOption('workroom');
  await page.getByLabel('When a draft is checked, say').selectOption('verdict');
  await page.getByLabel('How often a draft may be checked').fill('1');
  await page.getByLabel('Hints may be taken').uncheck();
  await page.getByLabel('To be handed in by').fill('2030-03-06T17:00');
  await axe(page);
  const { name, text } = await downloaded(page, 'save-set');
  expect(name).toBe('week-2-overlap.set.json');
  const read = readSet(text, exerciseNames());
  if (!read.ok) throw new Error(text);
  expect(read.set).toMatchObject({
    exercises: [{ exercise: 'overlap' }, { exercise: 'break-point', marks: 20 }],
    figures: { each: 'women' },
    feedback: 'verdict',
    checks: 1,
    hints: false,
  });
  const address = new URL(await page.getByLabel('Link', { exact: true }).inputValue());
  expect(readSetLink(address.hash, exerciseNames())).toEqual(read);
  await expect(page.getByText('The link opens on this machine only')).toBeVisible();

  // Seen as a student, in a browser in which a student works on the same set: neither finds anything of the other's.
  await page.evaluate(() => localStorage.setItem('gorgeline.student', 'Ilse'));
  const [seen] = await Promise.all([page.waitForEvent('popup'), act(page, 'as-student').click()]);
  const before = await page.evaluate(() => ({ ...localStorage }));
  await expect(seen.getByText('You see this set as a student does.')).toBeVisible();
  await expect(seen.getByLabel('Your name')).toHaveValue('');
  await seen.getByLabel('Your name').fill('Somebody');
  await seen.getByRole('link', { name: 'Begin “Overlap edge, single-breasted”' }).click();
  await awakeTable(seen);
  await expect(seen.getByText('You see this set as a student does.')).toBeVisible();
  await expect(seen.getByText('Kept in this tab alone while you look')).toBeVisible();
  await expect(seen.getByText('Kept in this browser after every step')).toHaveCount(0);
  await drawStep(seen, {
    tool: 'parallel',
    does: [{ x: 0, y: 200 }, 'overlap', { x: -70, y: 200 }],
    answers: 'overlap-edge',
  });
  await act(seen, 'check').click();
  await seen.getByRole('link', { name: 'Back to the set' }).click();
  await expect(seen.getByLabel('Your name')).toHaveValue('Somebody');
  await expect(seen.locator('[data-exercise="overlap"] .work-state')).toHaveText('one step, checked once');
  expect(await seen.evaluate(() => ({ ...localStorage }))).toEqual(before);
  await seen.close();
  await page.reload();
  await expect(page.locator('.desk-chosen > li')).toHaveCount(2);
  // One of its exercises has left the course: the set is told of, and stays as it is until another is begun.
  const lying = () => page.evaluate(() => localStorage.getItem('gorgeline.desk.set') ?? '');
  const readable = await lying();
  const gone = readable.replace('"overlap"', '"pocket-welt"');
  await page.evaluate((text) => localStorage.setItem('gorgeline.desk.set', text), gone);
  await page.reload();
  await expect(page.getByRole('alert')).toContainText('This copy of the course has no exercise “pocket-welt”.');
  await axe(page);
  expect(await downloaded(page, 'save-unread')).toMatchObject({ name: 'week-2-overlap.set.json', text: gone });
  await page.reload();
  expect(await lying()).toBe(gone);
  for (const _ of [1, 2]) await act(page, 'new-set').click();
  await expect(page.locator('.desk-chosen > li')).toHaveCount(0);
  await page.evaluate((text) => localStorage.setItem('gorgeline.desk.set', text), readable);
  await page.reload();

  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.desk-printed')).toContainText('Week 2: overlap');
  await expect(page.locator('.desk-printed')).toContainText('its file, week-2-overlap.set.json, on this page:');
  await expect(page.getByLabel('Title')).toBeHidden();
  await expect(page.getByRole('heading', { name: 'Set work' })).toBeHidden();
  await expect(page.getByText('How this is done, press by press')).toBeHidden();
});

test.describe('a student', () => {
  test('works a set on a figure of their own, is told no more than the set allows, and hands it in', async ({
    page,
  }) => {
    await page.goto(linkTo(set));
    await expect(page.locator('.work h2')).toHaveText(set.title);
    // The figures follow from the name.
    await expect(page.getByRole('link', { name: 'Begin “Overlap edge, single-breasted”' })).toHaveCount(0);
    await page.getByLabel('Your name').fill('Ilse\tMaringa');
    await page.getByLabel('Your number').fill('17');
    expect(await moved(page)).toEqual([]);
    await axe(page);
    await page.getByRole('link', { name: 'Begin “Overlap edge, single-breasted”' }).click();
    await awakeTable(page);
    await expect(page.locator('.hints, .setup')).toHaveCount(0);
    await drawStep(page, {
      tool: 'parallel',
      does: [{ x: 0, y: 200 }, 'overlap', { x: -70, y: 200 }],
      answers: 'overlap-edge',
    });
    await act(page, 'check').click();
    await expect(page.locator('.report h2')).toHaveText('1 of 1 right');
    await expect(page.locator('.report .note p, .report [data-do="show-right"]')).toHaveCount(0);
    await expect(act(page, 'check')).toBeDisabled();
    // All is right: what comes next stands first, and leads to it in the set.
    const onward = page.locator('.report-ends :first-child');
    await expect(onward).toHaveText('Next in the set: Break level and break point');
    await expect(onward).toHaveAttribute('href', `../break-point/#in=${setMark(set).id}`);
    await axe(page);
    await page.reload();
    await awakeTable(page);
    await expect(act(page, 'check')).toBeDisabled();
    // What the check told is there again, no more than the set allows, and it counts for none.
    await expect(page.locator('.report h2')).toHaveText('1 of 1 right');
    await expect(page.locator('.report .note p, .report [data-do="show-right"]')).toHaveCount(0);
    await page.getByRole('link', { name: 'Back to the set' }).click();
    await expect(page.locator('[data-exercise="overlap"] .work-state')).toHaveText('one step, checked once');
    const { name, file, text } = await downloaded(page, 'hand-in-set');
    expect(name).toBe('ilse-maringa.week-2-overlap.hand-in.ndjson');
    expect(text).not.toMatch(/"marks?"/);
    const row = JSON.parse(execFileSync(process.execPath, ['src/cli/grade.ts', file], { cwd: ROOT, encoding: 'utf8' }));
    expect(row).toMatchObject({ student: 'Ilse Maringa', set: set.title, exercise: 'overlap', marks: row.of });
    expect(JSON.parse(text)).toMatchObject({
      number: '17',
      set: setMark(set),
      order: { figure: { sampled: 'women', seed: 'autumn/#17' } },
      checks: 1,
    });
    // Where nothing may be checked again, nobody is asked to try again.
    await page.getByRole('link', { name: 'Begin “Break level and break point”' }).click();
    await awakeTable(page);
    await drawStep(page, {
      tool: 'parallel',
      does: [{ x: 0, y: 200 }, 'overlap', { x: 70, y: 200 }],
      answers: 'overlap-edge',
    });
    await act(page, 'check').click();
    await expect(act(page, 'mend')).toHaveText('Back to the draft');
  });

  test('goes on with a hand-in on another machine, and is told of another set’s', async ({ page }) => {
    await page.goto(linkTo(set));
    const line = JSON.stringify({
      format: 'gorgeline hand-in',
      version: 1,
      student: 'Ilse Maringa',
      number: '17',
      set: setMark(set),
      exercise: 'overlap',
      order: { figure: { sampled: 'women', seed: 'autumn/#17' }, style: {}, house: {} },
      strictness: 'workroom',
      unit: 'cm',
      steps: [{ verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' }],
      shown: [],
      hints: {},
      checks: 1,
      begun: '2026-03-01T09:00:00.000Z',
      saved: '2026-03-01T10:00:00.000Z',
    });
    const open = async (text: string) =>
      await page
        .locator('.work input[type=file]')
        .setInputFiles({ name: 'x.ndjson', mimeType: 'application/x-ndjson', buffer: Buffer.from(text) });
    await open(`${line}\n`);
    await expect(page.getByRole('status')).toHaveText('One draft is taken from the file.');
    await expect(page.locator('[data-exercise="overlap"] .work-state')).toHaveText('one step, checked once');
    // A file of another draft takes its place, and gives it back.
    await open(line.replace('"left"', '"right"').replace('"checks":1', '"checks":2'));
    await expect(page.getByRole('status')).toHaveText(/One took the place of another draft\.$/);
    await expect(page.locator('[data-exercise="overlap"] .work-state')).toHaveText('one step, checked twice');
    await act(page, 'put-back').click();
    await expect(page.locator('[data-exercise="overlap"] .work-state')).toHaveText('one step, checked once');
    await open(line.replace(setMark(set).id, '00000000'));
    await expect(page.getByRole('status')).toHaveText(/belongs to another set, “Week 2: overlap”/);
    await open(line.slice(0, 100));
    await expect(page.getByRole('status')).toHaveText(/^This cannot be opened\. This is not a whole file/);
    // Whatever a title is made of, it is text, and what turns the direction of writing is spelled.
    await page.goto(linkTo({ ...set, title: '<b>Week 2</b>\u202Egnp' }));
    await expect(page.locator('.work h2')).toHaveText('<b>Week 2</b>\\u202egnp');
  });

  test('is told in words when a link is damaged', { tag: ['@desktop', '@phone'] }, async ({ page }) => {
    await page.goto(linkTo(set).slice(0, -30));
    await expect(page.getByRole('alert')).toHaveText(/^This cannot be opened\. This link is damaged/);
    await axe(page);
  });

  test('finds the way back where a set is not open in this browser', async ({ page }) => {
    await page.goto(`/exercises/overlap/#in=${setMark(set).id}`);
    await awakeTable(page);
    await expect(page.locator('.notice')).toContainText('not open in this browser');
  });
});
