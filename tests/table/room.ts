import { millimetres } from '../../src/drafting/quantity.ts';
import { givensOf } from '../../src/garment/measures.ts';
import { personNamed } from '../../src/garment/people.ts';
import type { About } from '../../src/table/model/about.ts';
import type { Action } from '../../src/table/model/action.ts';
import type { Bench, Filling, Room, ToolId } from '../../src/table/model/bench.ts';
import { emptyBench } from '../../src/table/model/bench.ts';
import { reduce } from '../../src/table/model/reduce.ts';

/** A table laid for an invented person, asking for an edge and a mark. */
export const room: Room = {
  givens: laid(),
  marker: laid(),
  targets: [
    { name: 'overlap-edge', makes: 'line', hints: ['', '', ''] },
    { name: 'break-point', makes: 'point', hints: ['', '', ''] },
  ],
};

function laid() {
  const person = personNamed('amara');
  const made =
    person &&
    givensOf(
      person.figure,
      new Map([
        ['overlap', millimetres(30)],
        ['stand', millimetres(32)],
      ]),
    );
  if (!made?.ok) throw new Error('The table could not be laid.');
  return made.givens;
}

export const about: About = {
  setting: { figure: { named: 'amara' }, style: {}, house: {}, strictness: 'workroom' },
  student: 'Ana Lind',
  number: '',
  shown: [],
  hints: {},
  checks: 0,
  begun: null,
};

/** The bench after these actions. */
export function benchAfter(actions: readonly Action[], bench: Bench = emptyBench(about)): Bench {
  return actions.reduce((now, action) => reduce(now, action, room), bench);
}

/** Takes a tool, fills its blanks and draws. */
export function step(tool: ToolId, filled: Readonly<Record<string, Filling>>, answers: string | null = null): Action[] {
  return [
    { do: 'take', tool },
    ...Object.entries(filled).map(([field, value]): Action => ({ do: 'fill', field, value })),
    { do: 'call', target: answers },
    { do: 'draw' },
  ];
}

export const edge = step('parallel', { to: 'centre-front', distance: 'overlap', side: 'left' });
export const level = step('parallel', { to: 'waist', distance: '4 cm', side: 'up' });
export const crossing = step('cross', { one: 'line-1', other: 'line-2' }, 'break-point');
