import { bestMarks, hasDraft } from '../table/store/marks.ts';
import { isRead } from './read-lessons.ts';

/**
 * Writes what this browser has kept beside each exercise: the best marks, or that it is begun. The words stand
 * in the page: `data-got` with a place for `{marks}`, and `data-begun`.
 */
export function showMarks(root: ParentNode): void {
  for (const line of root.querySelectorAll<HTMLElement>('[data-exercise]')) {
    const { exercise = '', got = '', begun = '' } = line.dataset;
    const best = bestMarks(exercise);
    if (best) line.textContent = got.replace('{marks}', String(best.marks));
    else if (hasDraft(exercise)) line.textContent = begun;
  }
}

/** Shows beside each lesson of the contents that it is read. */
export function showRead(root: ParentNode): void {
  for (const note of root.querySelectorAll<HTMLElement>('[data-lesson]')) {
    note.hidden = !isRead(note.dataset.lesson ?? '');
  }
}
