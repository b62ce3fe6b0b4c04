/**
 * Hands a letter or a figure that is typed over the sheet or at the tools to the blank in hand: a mouse that points leaves the
 * focus there, where there is no use for words. A blank that is pointed at takes letters only, since figures may stand for the sheet.
 * False where the key is not one of them, or no blank waits.
 */
export function typeOn({ key, currentTarget }: KeyboardEvent): boolean {
  if (!/^[\p{L}\p{N}]$/u.test(key) || !(currentTarget instanceof Element)) return false;
  const blank = currentTarget
    .closest('.table')
    ?.querySelector<HTMLInputElement>('.sentence .blank[data-current="true"] .blank-input');
  if (!blank || (blank.inputMode === 'none' && /\p{N}/u.test(key))) return false;
  // The key goes on to what has the focus by then.
  blank.focus();
  return true;
}
