import { message } from '../../words/message.ts';
import { wantedWords } from '../kinds.ts';
import { LIST_LENGTH } from '../limits.ts';
import { isRecord } from '../record.ts';
import { isHandle, isTurn } from '../take/passing.ts';
import type { Blank } from '../verbs.ts';
import type { Reader } from './fault.ts';
import { type Entry, layoutOf, readRecord } from './record.ts';
import { isPlace, readExpression, readName, readWhere } from './values.ts';

/** The reader of what may stand in a blank, by its form only. */
export function readerOf(blank: Blank): Reader {
  const wanted = wantedWords(blank);
  switch (blank.takes) {
    case 'object':
    case 'toward':
      return readName(wanted);
    case 'objects':
      return readList(blank, blank.least, readName(message('a.point')));
    case 'run':
      return readList(blank, 1, readRunEntry);
    case 'length':
    case 'angle':
    case 'number':
      return readExpression(wanted);
    case 'near':
      return (value, at, faults) => (Array.isArray(value) ? readPlace : readName(wanted))(value, at, faults);
    case 'turn':
      return readWhere((value) => value === 'clockwise' || value === 'anticlockwise', wanted);
    case 'place':
      return readPlace;
    case 'heading':
      return readHeading;
    case 'shape':
      return readList(blank, 0, readPassing);
  }
}

const readPlace: Reader = (value, at, faults) => {
  readWhere(isPlace, message('wanted.place'))(value, at, faults);
  return Array.isArray(value) ? [...value] : value;
};

function readList(blank: Blank, least: number, readOne: Reader): Reader {
  return (value, at, faults) => {
    if (!Array.isArray(value) || value.length < least) {
      return readWhere(() => false, wantedWords(blank))(value, at, faults);
    }
    if (value.length > LIST_LENGTH) {
      faults.push({ at, message: message('problem.too-long-list', { limit: LIST_LENGTH }) });
      return value;
    }
    return value.map((one, index) => readOne(one, `${at}[${index}]`, faults));
  };
}

const needed = (field: string, read: Reader, wanted: Entry['wanted']): Entry => ({
  field,
  read,
  wanted,
  optional: false,
});

const drawn = message('a.line-or-curve');
const point = message('a.point');
const line = message('a.line');
const part = layoutOf([
  needed('along', readName(drawn), drawn),
  needed('from', readName(point), point),
  needed('to', readName(point), point),
]);

const readRunEntry: Reader = (value, at, faults) =>
  isRecord(value) ? readRecord(value, at, part, faults) : readName(message('wanted.run-entry'))(value, at, faults);

const headings = {
  along: layoutOf([needed('along', readName(line), line)]),
  square: layoutOf([needed('square', readName(line), line)]),
};

const readHeading: Reader = (value, at, faults) => {
  if (!isRecord(value)) return readWhere(() => false, message('wanted.heading'))(value, at, faults);
  const { along, square } = value;
  const field = along === undefined && square !== undefined ? 'square' : 'along';
  return readRecord(value, at, headings[field], faults);
};

const handle = message('wanted.handle');
const turn = message('wanted.turn-angle');
const passing = layoutOf([
  needed('turn', readWhere(isTurn, turn), turn),
  needed('before', readWhere(isHandle, handle), handle),
  needed('after', readWhere(isHandle, handle), handle),
]);

const readPassing: Reader = (value, at, faults) => {
  if (value === null) return null;
  if (!isRecord(value)) return readWhere(() => false, message('wanted.passing'))(value, at, faults);
  return readRecord(value, at, passing, faults);
};
