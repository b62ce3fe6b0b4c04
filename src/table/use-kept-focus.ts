import { useLayoutEffect, useRef } from 'preact/hooks';

const REACHED = 'button:not(:disabled, [tabindex="-1"]), input:not([tabindex="-1"]), select, [tabindex="0"]';

/**
 * Keeps the keyboard's place when what had the focus is taken off the page: a step rubbed out, a sentence that was drawn. The
 * focus goes to the same blank where it is drawn anew, as one that was mended is; otherwise to the first thing that can take it
 * in what is left around the lost one.
 */
export function useKeptFocus(): (event: FocusEvent) => void {
  const around = useRef<readonly Element[]>([]);
  useLayoutEffect(() => {
    const [lost, ...rest] = around.current;
    if (!lost || lost.isConnected || document.activeElement !== document.body) return;
    const left = rest.filter((element) => element.isConnected);
    const field = around.current.find((element) => element.hasAttribute('data-field'))?.getAttribute('data-field');
    const same = field ? [`button[data-field="${CSS.escape(field)}"]`] : [];
    const next = left.flatMap((element) =>
      [...same, REACHED].map((wanted) => element.querySelector<HTMLElement>(wanted)),
    );
    next.find((element) => element !== null)?.focus({ preventScroll: true });
  });
  return ({ target }) => {
    around.current = target instanceof Element ? pathOf(target) : [];
  };
}

/** An element and what it lies in, up to the table. */
function pathOf(element: Element): Element[] {
  const path: Element[] = [];
  for (let at: Element | null = element; at; at = at.parentElement) {
    path.push(at);
    if (at.classList.contains('table')) break;
  }
  return path;
}
