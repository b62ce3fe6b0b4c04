/** Takes up the reader's unit and keeps it. */
export function attachUnitSwitch(fieldset: HTMLFieldSetElement): void {
  const root = document.documentElement;
  for (const input of fieldset.querySelectorAll<HTMLInputElement>('input')) {
    input.checked = input.value === root.dataset['unit'];
    input.addEventListener('change', () => {
      root.dataset['unit'] = input.value;
    });
  }
}
