import type { VNode } from 'preact';
import type { Placed } from './labels.ts';
import { figure } from './path-data.ts';

/** Words beside their anchor, with the leader that runs to them where they stand off it: from a dot on the line they name. */
export function Words({ text, tone, shift, leader, onLine }: Placed): VNode {
  return (
    <>
      {leader ? (
        <path
          class={`leader leader--${tone}`}
          d={`M${figure(leader.from.x)} ${figure(leader.from.y)}L${figure(leader.to.x)} ${figure(leader.to.y)}`}
        />
      ) : null}
      {leader && onLine ? (
        <circle class={`leader-dot leader-dot--${tone}`} cx={figure(leader.from.x)} cy={figure(leader.from.y)} r="2" />
      ) : null}
      <text class={`words words--${tone}`} x={figure(shift.x)} y={figure(shift.y)}>
        {text}
      </text>
    </>
  );
}

/** Tells words on one sheet apart. */
export function keyOfWords({ text, anchor }: Placed): string {
  return `${text}/${anchor.x}/${anchor.y}`;
}
