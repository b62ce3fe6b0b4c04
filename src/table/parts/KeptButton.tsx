import type { ComponentChildren, VNode } from 'preact';

interface KeptButtonProps {
  readonly class: string;
  readonly does?: string;
  /** Whether there is nothing for it to do now. */
  readonly idle: boolean;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/**
 * A button that keeps the focus when its own press leaves it nothing more to do. A button that is disabled lets the focus go,
 * and with it the place of whoever works by keyboard.
 */
export function KeptButton({ class: looks, does, idle, onPress, children }: KeptButtonProps): VNode {
  return (
    <button
      type="button"
      class={looks}
      data-do={does}
      aria-disabled={idle ? true : undefined}
      onClick={() => {
        if (!idle) onPress();
      }}
    >
      {children}
    </button>
  );
}
