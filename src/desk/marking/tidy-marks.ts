/** Marks as they are shown, to a tenth, without a needless zero; files keep every digit. */
export function tidyMarks(marks: number): number {
  return Math.round(marks * 10) / 10;
}
