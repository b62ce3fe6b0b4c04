import { type Message, message } from '../../words/message.ts';
import { hasUnseen } from '../../words/unseen.ts';
import { EXPRESSION_LENGTH, SHEET_REACH } from '../limits.ts';
import { isName } from '../name.ts';
import { shortened } from '../word-of.ts';
import type { Reader } from './fault.ts';
import { foundWords } from './found.ts';

/** Reads whatever `fits`; anything else is a fault that says what is wanted. */
export function readWhere(fits: (value: unknown) => boolean, wanted: Message): Reader {
  return (value, at, faults) => {
    if (!fits(value)) {
      const values = { wanted: { said: wanted }, found: { said: foundWords(value) } };
      faults.push({ at, message: message('read.wrong', values) });
    }
    return value;
  };
}

/** Reads a name of the grammar. */
export function readName(wanted: Message): Reader {
  const readText = readWhere((value) => typeof value === 'string', wanted);
  return (value, at, faults) => {
    if (typeof value !== 'string' || isName(value)) return readText(value, at, faults);
    faults.push({ at, message: message('problem.name-form', { name: shortened(value) }) });
    return value;
  };
}

/** Reads an expression: any text that is neither empty nor too long and can be seen. It is understood when the draft is replayed. */
export function readExpression(wanted: Message): Reader {
  const readText = readWhere((value) => typeof value === 'string', wanted);
  return (value, at, faults) => {
    if (value === '') faults.push({ at, message: message('expression.empty') });
    else if (typeof value === 'string' && [...value].length > EXPRESSION_LENGTH) {
      faults.push({ at, message: message('expression.too-long', { limit: EXPRESSION_LENGTH }) });
    } else if (typeof value === 'string' && hasUnseen(value)) {
      faults.push({ at, message: message('read.unseen', { found: shortened(value) }) });
    } else return readText(value, at, faults);
    return value;
  };
}

/** Whether this is two numbers in mm within reach of the sheet. */
export function isPlace(value: unknown): boolean {
  return Array.isArray(value) && value.length === 2 && value.every((one) => isReached(one));
}

const isReached = (value: unknown): boolean => typeof value === 'number' && Math.abs(value) <= SHEET_REACH;
