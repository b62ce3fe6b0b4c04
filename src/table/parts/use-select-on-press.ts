import { useRef } from 'preact/hooks';

type Input = HTMLInputElement;

interface Pressed {
  readonly onPointerDown: (event: { readonly currentTarget: Input }) => void;
  readonly onClick: (event: { readonly currentTarget: Input }) => void;
}

/**
 * For a field: the press that gives it the focus selects what stands in it, as the Tab key does, so that what is typed takes its
 * place. A second press sets the cursor. `then` is what a press does besides.
 */
export function useSelectOnPress(then: () => void): Pressed {
  const isFresh = useRef(false);
  return {
    onPointerDown: ({ currentTarget }) => {
      isFresh.current = document.activeElement !== currentTarget;
    },
    onClick: ({ currentTarget }) => {
      if (isFresh.current) currentTarget.select();
      isFresh.current = false;
      then();
    },
  };
}
