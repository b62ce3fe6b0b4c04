import { lengthText } from '../../words/length.ts';
import { listText } from '../../words/list.ts';
import { type Message, message } from '../../words/message.ts';
import { nameText, type Reader, say } from '../../words/say.ts';
import { isDirection } from '../name.ts';
import { isRecord } from '../record.ts';
import type { Field } from '../verbs.ts';
import { expressionText } from './expression-text.ts';
import type { Speaker } from './speaker.ts';

/** What fills a blank, in words; null where it is empty or cannot be read. */
export function fillText({ field, blank }: Field, value: unknown, speaker: Speaker): string | null {
  const { reader } = speaker;
  switch (blank.takes) {
    case 'object':
      return typeof value === 'string' ? nameText(value, reader) : null;
    case 'objects':
    case 'run':
      return runText(value, reader);
    case 'length':
    case 'angle':
    case 'number':
      return typeof value === 'string' ? expressionText(value, speaker) : null;
    default:
      return spoken(fillMessage(field, blank.takes, value, reader), reader);
  }
}

type Phrase = 'toward' | 'near' | 'turn' | 'place' | 'heading' | 'shape';

function fillMessage(field: string, takes: Phrase, value: unknown, reader: Reader): Message | null {
  switch (takes) {
    case 'toward':
      return field === 'side' ? sideMessage(value) : towardMessage(value);
    case 'near':
      return nearMessage(value, reader);
    case 'turn':
      return value === 'clockwise' || value === 'anticlockwise' ? message(`fill.${value}`) : null;
    case 'place':
      return placeMessage(value, reader);
    case 'heading':
      return headingMessage(value, field === 'arrive' ? 'arriving' : 'leaving');
    case 'shape':
      return Array.isArray(value) && value.some(isRecord) ? message('fill.shaped') : null;
  }
}

const spoken = (said: Message | null, reader: Reader): string | null => (said ? say(said, reader) : null);

function runText(value: unknown, reader: Reader): string | null {
  if (!Array.isArray(value) || value.length === 0) return null;
  const words = value.map((one) => {
    if (!isRecord(one)) return typeof one === 'string' ? nameText(one, reader) : say(message('fill.missing'), reader);
    const named = (field: string) => ({ named: typeof one[field] === 'string' ? one[field] : '…' });
    return say(message('fill.part', { along: named('along'), from: named('from'), to: named('to') }), reader);
  });
  return listText(words, reader.language);
}

function towardMessage(value: unknown): Message | null {
  if (typeof value !== 'string') return null;
  return isDirection(value) ? message(`way.${value}`) : message('fill.toward', { point: { named: value } });
}

function sideMessage(value: unknown): Message | null {
  if (typeof value !== 'string') return null;
  return isDirection(value) ? message(`fill.side-${value}`) : message('fill.side', { point: { named: value } });
}

function nearMessage(value: unknown, reader: Reader): Message | null {
  if (isDirection(value)) return message(`fill.${value}`);
  if (typeof value === 'string') return message('fill.near', { place: { named: value } });
  const place = placeMessage(value, reader);
  return place && message('fill.near', { place: { said: message('fill.spot', { place: { said: place } }) } });
}

/** A place by its distances from the centre front and the waist, which cross at the origin of the sheet. */
function placeMessage(value: unknown, { unit }: Reader): Message | null {
  if (!Array.isArray(value)) return null;
  const [x, y] = value as readonly unknown[];
  if (typeof x !== 'number' || typeof y !== 'number') return null;
  const none = (mm: number): boolean => lengthText(Math.abs(mm), unit) === lengthText(0, unit);
  const off = (mm: number) => ({ distance: { mm: Math.abs(mm) } });
  const across = none(x)
    ? message('fill.on-front')
    : message(x < 0 ? 'fill.left-of-front' : 'fill.right-of-front', off(x));
  const up = none(y) ? message('fill.on-waist') : message(y > 0 ? 'fill.above-waist' : 'fill.below-waist', off(y));
  return message('fill.place', { across: { said: across }, up: { said: up } });
}

function headingMessage(value: unknown, going: 'leaving' | 'arriving'): Message | null {
  if (!isRecord(value)) return null;
  const { along, square } = value;
  if (typeof along === 'string') return message(`fill.${going}-along`, { line: { named: along } });
  return typeof square === 'string' ? message(`fill.${going}-square`, { line: { named: square } }) : null;
}
