import type { VNode } from 'preact';
import { add, type Point } from '../../geometry/point.ts';
import type { Placed } from './labels.ts';
import { figure, runBetween } from './path-data.ts';

interface WordsProps extends Placed {
  /** Where their anchor is, px. */
  readonly at?: Point;
}

const HERE: Point = { x: 0, y: 0 };

/** Words beside their anchor, with the leader that runs to them where they stand off it: from a dot on the line they name. */
export function Words({ text, tone, shift, leader, onLine, at = HERE }: WordsProps): VNode {
  const x = (p: Point): string => figure(at.x + p.x);
  const y = (p: Point): string => figure(at.y + p.y);
  return (
    <>
      {leader ? (
        <line class={`leader leader--${tone}`} {...runBetween(add(at, leader.from), add(at, leader.to))} />
      ) : null}
      {leader && onLine ? (
        <circle class={`leader-dot leader-dot--${tone}`} cx={x(leader.from)} cy={y(leader.from)} r="2" />
      ) : null}
      <text class={`words words--${tone}`} x={x(shift)} y={y(shift)}>
        {text}
      </text>
    </>
  );
}

/** Tells words on one sheet apart, wherever they go: by what they say, and how often it was said before. */
export function keysOfWords(placed: readonly Placed[]): readonly string[] {
  const said = new Map<string, number>();
  return placed.map(({ text }) => {
    const times = said.get(text) ?? 0;
    said.set(text, times + 1);
    return `${text}/${times}`;
  });
}
