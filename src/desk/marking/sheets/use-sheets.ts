import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { BookLine } from '../../../exchange/class/gradebook.ts';

/**
 * Sheets put on the page one after another, so that it answers meanwhile: drawing one takes a moment, and a class has many.
 * `make` makes the sheet of a line. It stands still until something of what it depends on, which `on` says, is another.
 */
export function useSheets(lines: readonly BookLine[], on: Making['on'], make: Making['make']): readonly VNode[] {
  const [count, setCount] = useState(1);
  const made = useRef(new Map<string, Made>());
  useEffect(() => {
    if (count >= lines.length) return;
    const turn = setTimeout(() => setCount(count + 1), 0);
    return () => clearTimeout(turn);
  }, [count, lines]);
  return lines.slice(0, count).map((line, place) => sheetOf(line, place, made.current, { on, make }));
}

interface Made {
  readonly on: readonly unknown[];
  readonly sheet: VNode;
}

interface Making {
  readonly on: (line: BookLine) => readonly unknown[];
  readonly make: (line: BookLine, place: number) => VNode;
}

function sheetOf(line: BookLine, place: number, made: Map<string, Made>, { on, make }: Making): VNode {
  const key = `${place} ${line.key}`;
  const now = on(line);
  const before = made.get(key);
  if (before && before.on.length === now.length && before.on.every((one, index) => one === now[index]))
    return before.sheet;
  const sheet = make(line, place);
  made.set(key, { on: now, sheet });
  return sheet;
}
