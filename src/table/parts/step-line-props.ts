import type { Sheet } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Bench, Room } from '../model/bench.ts';
import type { Say } from '../say.ts';
import type { Dispatch } from '../use-bench.ts';

/** One step of the working, and what it stands in. */
export interface StepLineProps {
  readonly index: number;
  readonly step: Step;
  readonly bench: Bench;
  readonly room: Room;
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
  readonly say: Say;
  readonly dispatch: Dispatch;
  readonly onLight: (name: Name | null) => void;
}
