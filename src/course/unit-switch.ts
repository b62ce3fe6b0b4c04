import { storageIn } from '../table/store/storage.ts';

/** Where the reader's unit is kept. The script that runs before the first paint reads it too (layouts/early.ts). */
export const UNIT_KEY = 'gorgeline.unit';

/** Takes up the unit the page stands in, and keeps the reader's choice. Figures and tables watch `data-unit` on the root. */
export function attachUnitSwitch(fieldset: HTMLFieldSetElement): void {
  const root = document.documentElement;
  const local = storageIn(() => window.localStorage);
  for (const input of fieldset.querySelectorAll<HTMLInputElement>('input')) {
    input.checked = input.value === root.dataset.unit;
    input.addEventListener('change', () => {
      root.dataset.unit = input.value;
      local.write(UNIT_KEY, input.value);
    });
  }
}
