import type { RollReport as Report } from '../../garment/collar/roll-report.ts';
import { distance } from '../../geometry/point.ts';
import { type Message, message } from '../../words/message.ts';

/** What no pencil can draw, mm. */
const NOTHING = 0.25;

/** What a collar may be too wide or too narrow by at the centre back, mm: a mark in the workroom. */
const WIDTH = 3;

/** Whether something is wrong: an edge that the iron is meant to stretch may be short. */
export function isTrouble(report: Report): boolean {
  const { verdict, ironed } = report;
  return verdict === 'ripples' || (verdict === 'pulls' && !ironed) || widthOff(report) !== 0;
}

/** By how much the collar is wider at the centre back than stand and fall together, mm; nothing where a mark is no finer. */
function widthOff({ stations, stand, fall }: Report): number {
  const behind = stations[0]?.across;
  const off = behind ? distance(behind.neck, behind.outer) - (stand + fall) : 0;
  return Math.abs(off) > WIDTH ? off : 0;
}

/** What the cloth will do. */
export function sayVerdict(report: Report): Message {
  const { verdict, needed, drawn, ironed } = report;
  const off = { mm: Math.abs(drawn - needed) };
  if (verdict === 'lies') return message(widthOff(report) === 0 ? 'views.roll-lies' : 'views.roll-long-enough');
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
    ...sayWidth(report),
  ];
}

/** An edge of the right length on a collar of another width: it does not come down where the picture has it. */
function sayWidth(report: Report): readonly Message[] {
  const off = widthOff(report);
  if (off === 0) return [];
  const wanted = report.stand + report.fall;
  return [
    message('views.roll-width', {
      which: off < 0 ? 'narrow' : 'wide',
      width: { mm: wanted + off },
      wanted: { mm: wanted },
      off: { apart: [wanted + off, wanted], unit: 'mm' },
    }),
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
