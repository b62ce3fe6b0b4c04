import type { Name, Passing, Step } from '../../drafting/step.ts';
import type { About } from './about.ts';
import type { Filling, ToolId } from './bench.ts';
import type { Setting } from './setting.ts';

/** Everything that can be done at the table. Pointing, choosing from a list and typing all end in `fill`. */
export type Action =
  | { readonly do: 'take'; readonly tool: ToolId }
  | { readonly do: 'put-down' }
  | { readonly do: 'turn-to'; readonly field: string }
  | { readonly do: 'fill'; readonly field: string; readonly value: Filling }
  | { readonly do: 'clear'; readonly field: string }
  | { readonly do: 'call'; readonly target: Name | null }
  | { readonly do: 'draw' }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' }
  | { readonly do: 'go'; readonly upTo: number }
  /** All of the draft, without a tool in hand: as it is marked. Nothing is said of it. */
  | { readonly do: 'whole' }
  | { readonly do: 'erase'; readonly index: number }
  | { readonly do: 'amend'; readonly index: number; readonly field: string; readonly value: Filling | null }
  | { readonly do: 'rename'; readonly index: number; readonly name: string }
  | { readonly do: 'answer'; readonly index: number; readonly target: Name | null }
  | { readonly do: 'move'; readonly name: Name; readonly at: readonly [number, number] }
  | { readonly do: 'bend'; readonly name: Name; readonly shape: readonly (Passing | null)[] }
  | { readonly do: 'let-go' }
  /** A draft from a file: a change that can be undone, with all that the file says about it. */
  | { readonly do: 'open'; readonly steps: readonly Step[]; readonly about: About }
  /** A draft that was kept: it lies there as it was left. */
  | { readonly do: 'lay'; readonly steps: readonly Step[]; readonly upTo: number; readonly about: About }
  /** Another order laid under the same steps. */
  | { readonly do: 'order'; readonly setting: Setting }
  /** Something to write down about the draft, which is no change of it: a name, a hint that was opened. */
  | { readonly do: 'note'; readonly about: Partial<About> }
  | { readonly do: 'clear-sheet' };
