import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';

/**
 * Draws things, and each of them once as long as it is the very same thing: Preact passes over what it has drawn already.
 * All is drawn anew when one of `by` changes.
 */
export function useDrawn<Thing extends object>(
  draw: (thing: Thing, key: string) => VNode,
  by: readonly unknown[],
): (thing: Thing, key: string) => VNode {
  // biome-ignore lint/correctness/useExhaustiveDependencies: `by` says when all is to be drawn anew.
  return useMemo(() => keeping(draw), by);
}

function keeping<Thing extends object>(draw: (thing: Thing, key: string) => VNode): typeof draw {
  const drawn = new WeakMap<Thing, VNode>();
  return (thing, key) => {
    const before = drawn.get(thing);
    if (before?.key === key) return before;
    const now = draw(thing, key);
    drawn.set(thing, now);
    return now;
  };
}
