import type { RollReport as Report } from '../../garment/collar/roll-report.ts';
import { type Message, message } from '../../words/message.ts';

/** What no pencil can draw, mm. */
const NOTHING = 0.25;

/** Whether something is wrong: an edge that the iron is meant to stretch may be short. */
export function isTrouble({ verdict, ironed }: Report): boolean {
  return verdict === 'ripples' || (verdict === 'pulls' && !ironed);
}

/** What the cloth will do. */
export function sayVerdict({ verdict, needed, drawn, ironed }: Report): Message {
  const off = { mm: Math.abs(drawn - needed) };
  if (verdict === 'lies') return message('views.roll-lies');
  if (verdict === 'ripples') return message('views.roll-ripples', { off });
  return ironed ? message('views.roll-ironed', { off }) : message('views.roll-pulls', { off });
}

/** Why, and what comes of it. */
export function sayWhy(report: Report): readonly Message[] {
  const { verdict, needed, drawn, ironed, edges, fall, stand } = report;
  const irons = verdict === 'pulls' && ironed;
  return [
    message('views.roll-why', {
      verdict: irons ? 'irons' : verdict,
      needed: { mm: needed },
      drawn: { mm: Math.abs(drawn) },
      which: whichWay(drawn),
    }),
    ...(verdict === 'pulls' ? [sayEdge(report)] : []),
    ...(verdict === 'ripples' ? [sayStand(report)] : []),
    ...(irons ? [message('views.roll-unironed')] : []),
    ...(fall > stand ? [] : [message('views.roll-uncovered')]),
    ...(edges.drawn ? [] : [message('views.roll-strip')]),
  ];
}

/** An edge that gains less than can be drawn is said to gain nothing, not some hair's breadth either way. */
function whichWay(drawn: number): 'same' | 'longer' | 'shorter' {
  if (Math.abs(drawn) < NOTHING) return 'same';
  return drawn < 0 ? 'shorter' : 'longer';
}

function sayEdge({ settles, fall, stand }: Report): Message {
  const wanted = { mm: fall - stand };
  return settles.cover > 0.5
    ? message('views.roll-edge', { cover: { mm: settles.cover }, wanted })
    : message('views.roll-bare', { wanted });
}

function sayStand({ settles, stand }: Report): Message {
  return message('views.roll-stand', { stand: { mm: settles.stand }, wanted: { mm: stand } });
}

/** What the needed gain is worked out from. */
export function saySum({ fall, stand, turn, needed }: Report): Message {
  return message('views.roll-sum', {
    fall: { mm: fall },
    stand: { mm: stand },
    turn: { radians: turn },
    needed: { mm: needed },
  });
}
