import type { Name } from '../../drafting/step.ts';

/** To the first step of the working that answers one of the targets; where none does, to the tools, to draw it. */
export function toStepOf(targets: readonly Name[], table: Element | null): void {
  const answering = [...(table?.querySelectorAll<HTMLSelectElement>('.step-answers select') ?? [])];
  const choice = targets.flatMap((target) => answering.filter(({ value }) => value === target))[0];
  const words = choice?.closest('.step')?.querySelector<HTMLElement>('.blank-words');
  // A tool is reached where the sheet is in sight too.
  if (!words) table?.querySelector('.table-bench')?.scrollIntoView({ block: 'start', behavior: 'instant' });
  const to = words ?? table?.querySelector<HTMLElement>('.tools .tool[tabindex="0"]');
  to?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
  to?.focus({ preventScroll: true });
}

/** To what checks the draft again: it lies right above the notes that are rubbed out, and takes over the focus from them. */
export function toCheck(table: Element | null): void {
  table?.querySelector<HTMLElement>('[data-do="check"]')?.focus();
}
