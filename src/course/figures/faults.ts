import * as breakFaults from './break-point-faults.ts';
import type { Fault } from './fault.ts';
import * as patternFaults from './from-draft-to-pattern-faults.ts';
import * as formFaults from './from-form-to-table-faults.ts';
import * as lapelFaults from './lapel-and-fold-faults.ts';
import * as notchFaults from './notch-placement-faults.ts';
import * as edgeFaults from './outer-edge-faults.ts';
import * as overlapFaults from './overlap-faults.ts';
import * as rollFaults from './roll-line-faults.ts';
import * as standFaults from './stand-and-fall-faults.ts';
import * as truingFaults from './truing-and-walking-faults.ts';

/** Every pair of right and wrong, by id. */
export const faults: ReadonlyMap<string, Fault> = new Map(
  [
    overlapFaults,
    breakFaults,
    rollFaults,
    lapelFaults,
    notchFaults,
    standFaults,
    edgeFaults,
    truingFaults,
    patternFaults,
    formFaults,
  ]
    .flatMap((lesson): readonly Fault[] => Object.values(lesson))
    .map((fault) => [fault.id, fault]),
);
