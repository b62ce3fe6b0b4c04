import type { CheckRow, WorkRow } from '../exchange/grade-row.ts';
import { remarksByItself } from '../exchange/remarks.ts';
import { rulesInForce } from '../garment/rules-in-force.ts';
import { verdictOn } from '../grader/verdict.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import { inColumns } from './columns.ts';
import type { NotMade } from './grade-piece.ts';

const reader = { language: 'en', unit: 'cm' } as const;

/** Widths of the columns: fixed, because work is printed as it is marked, before the next piece is known. */
const widths = {
  student: 26,
  exercise: 20,
  marks: 11,
  others: 14,
  flags: 28,
  target: 22,
  check: 12,
  verdict: 13,
} as const;

/** The heading of the table. */
export function headLine(): string {
  const columns = ['student', 'exercise', 'marks', 'others', 'flags', 'file'] as const;
  return line(
    columns.map((column) => [said(message(`grade-table.${column}`)), column === 'file' ? 0 : widths[column]]),
  );
}

/** A piece of work in the table: one line, and one more for every check that is off. */
export function workLines(row: WorkRow, notMade: NotMade): string {
  const { tried, held } = row.otherFigures;
  const others = tried === 0 ? message('grade-table.none-tried') : message('grade-table.held', { held, tried });
  const first = line([
    [row.student.trim() === '' ? said(message('grade-table.nobody')) : row.student, widths.student],
    [row.exercise, widths.exercise],
    [said(message('grade-table.of', marksOf(row))), widths.marks],
    [said(others), widths.others],
    [flagsOf(row).join(', '), widths.flags],
    [row.file, 0],
  ]);
  const faults = row.checks
    .filter(({ status }) => status !== 'within')
    .map((check) => faultLine(check, verdictIn(row, check.target), notMade.get(check.target)));
  const problems = row.problems.map((problem) => `  ${spelled(problem)}\n`);
  // By which rule a draft was marked is worth a line where there is something to look into.
  const rules = faults.length === 0 ? [] : rulesInForce(row.house).map((rule) => `  ${said(rule)}\n`);
  const remarks = (row.inSet?.remarks ?? remarksByItself(row)).map((remark) => said(message(`remark.${remark}`)));
  const remarked = remarks.length === 0 ? [] : [`  ${remarks.join('; ')}\n`];
  return [first, ...remarked, ...problems, ...faults, ...rules].join('');
}

/** Marks to the scale of the set, where the work was marked in one. */
function marksOf({ marks, of, inSet }: WorkRow): { readonly marks: string; readonly of: string } {
  const counted = inSet ?? { marks, of };
  return { marks: tidy(counted.marks), of: tidy(counted.of) };
}

/** What a teacher may want to know before the marks are written down, in a word or two each. */
function flagsOf({ hints, shown, ownOrder, strictness, inSet }: WorkRow): readonly string[] {
  const taken = Object.values(hints).reduce<number>((sum, tier) => sum + tier, 0);
  return [
    ...(taken === 0 ? [] : [said(message('grade-table.hints', { count: taken }))]),
    ...(shown.length === 0 ? [] : [said(message('grade-table.shown', { count: shown.length }))]),
    ...(ownOrder || inSet !== null ? [] : [said(message('grade-table.other-order'))]),
    ...(strictness === 'workroom' ? [] : [strictness]),
  ];
}

/** The last line: how much was marked and how much could not be read. */
export function sumLine(marked: number, refused: number): string {
  return `\n${said(message('grade-table.sum', { marked, refused }))}\n`;
}

/** The word for a target, as it is said on the table and on the feedback sheet. */
function verdictIn({ checks }: WorkRow, of: string): string {
  const verdict = verdictOn(checks.filter(({ target }) => target === of));
  return said(message('verdict.word', { verdict }));
}

function faultLine(check: CheckRow, verdict: string, step: number | undefined): string {
  const notes = [
    howFar(check, step),
    check.misreading ?? '',
    check.carried ? said(message('grade-table.carried')) : '',
  ];
  return line([
    [`  ${check.target}`, widths.target],
    [check.check, widths.check],
    [verdict, widths.verdict],
    [notes.filter((note) => note !== '').join('; '), 0],
  ]);
}

function howFar({ status, off, unit, tolerance }: CheckRow, step: number | undefined): string {
  if (step !== undefined) return said(message('grade-table.not-made', { step }));
  if (status === 'missing') return said(message('grade-table.missing'));
  if (off === null) return said(message('grade-table.unread'));
  return said(message('grade-table.off', { off: tidy(off), unit, tolerance: tidy(tolerance) }));
}

/** To a tenth, without a needless zero. */
function tidy(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Cells padded to their widths and cut to fit, with a space between; the last is neither. */
function line(cells: readonly (readonly [text: string | undefined, width: number])[]): string {
  return `${cells.map(([text = '', width]) => (width === 0 ? spelled(text) : `${inColumns(spelled(text), width)} `)).join('')}\n`;
}

function said(one: Message): string {
  return say(one, reader);
}
