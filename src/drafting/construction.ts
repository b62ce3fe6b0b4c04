import { tidy } from './expression/tidy.ts';
import { namesIn } from './expression.ts';
import type { HalfStep } from './form.ts';
import { isDirection, NAME_PATTERN } from './name.ts';
import { madeReady, type Ready } from './ready/ready.ts';
import { isRecord } from './record.ts';
import type { Name } from './step.ts';
import type { Blank, Form } from './verbs.ts';

/**
 * What a step does, whatever the things are called that it does it to. Two steps of one pattern make the same from the same
 * things: `rule a from mark-1 to mark-2` and `rule roll-line from break-point to stand-point`, where the marks are the same.
 */
export interface Construction {
  readonly making: Making;
  /** The names it uses, of objects and of measures, in the order of their numbers. */
  readonly uses: readonly Name[];
}

/** What all steps of one pattern have in common. */
export interface Making {
  /** Another number for every other pattern. */
  readonly number: number;
  /** The step without its own name and target, with a number for each name it uses. */
  readonly pattern: string;
  readonly makes: Form['makes'];
  /** Carries it out, whoever's it is. */
  readonly make: Ready;
}

/** How deep a value may lie in a blank: an entry of a run is a record in a list. */
const DEEPEST = 3;

/** The construction of a step in its form; null where something stands in a blank that no step has there. */
export function constructionOf(step: HalfStep, form: Form): Construction | null {
  const uses: Name[] = [];
  let pattern: string = form.id;
  for (const { field, blank } of form.fields) {
    const part = partOf(step[field], blank, uses, 0);
    if (part === null) return null;
    pattern += `|${part}`;
  }
  return { making: theOne(pattern, step, form, uses), uses };
}

const patterns = new Map<string, Making>();
let last = 0;

/** So many patterns and amounts are kept, and then all are let go. */
const KEPT = 4000;

/** One text for all that read the same, so that what is looked up by it is found without reading it again; and one making. */
function theOne(pattern: string, step: HalfStep, form: Form, uses: readonly Name[]): Making {
  const known = patterns.get(pattern);
  if (known !== undefined) return known;
  if (patterns.size >= KEPT) patterns.clear();
  last += 1;
  const making = { number: last, pattern, makes: form.makes, make: madeReady(step, form, uses) };
  patterns.set(pattern, making);
  return making;
}

function partOf(value: unknown, blank: Blank, uses: Name[], depth: number): string | null {
  // Is the blank empty?
  if (value === undefined) return '';
  if (value === null) return '~';
  if (typeof value === 'string') return textOf(value, blank, uses);
  // Written out, minus nothing would be nothing.
  if (typeof value === 'number') return Object.is(value, -0) ? null : String(value);
  if (depth === DEEPEST) return null;
  if (Array.isArray(value)) return joined('[', value, (one) => partOf(one, blank, uses, depth + 1));
  if (!isRecord(value)) return null;
  return joined('{', Object.keys(value), (key) => {
    const part = partOf(value[key], blank, uses, depth + 1);
    return part === null ? null : `${JSON.stringify(key)}:${part}`;
  });
}

function joined<T>(opening: '[' | '{', all: readonly T[], write: (one: T) => string | null): string | null {
  let text: string = opening;
  for (const one of all) {
    const part = write(one);
    if (part === null) return null;
    text += `${part},`;
  }
  return text;
}

function textOf(text: string, blank: Blank, uses: Name[]): string {
  switch (blank.takes) {
    case 'length':
    case 'angle':
    case 'number':
      return amountOf(text, uses);
    case 'turn':
      return JSON.stringify(text);
    case 'toward':
    case 'near':
      return isDirection(text) ? text : numberOf(text, uses);
    default:
      return numberOf(text, uses);
  }
}

const NAMES = new RegExp(NAME_PATTERN.source.slice(1, -1), 'g');

/**
 * An expression with its names numbered, tidied as it is read: a name typed with a capital is that name, and one left
 * standing would pass for what never changes. One that cannot be understood stays as it is, and comes to nothing anyway.
 */
function amountOf(text: string, uses: Name[]): string {
  const { between, names } = amountIn(text);
  let amount = between[0] as string;
  for (let at = 0; at < names.length; at++) amount += numberOf(names[at] as Name, uses) + between[at + 1];
  return amount;
}

/** An expression taken apart: its names as they come, and what stands before, between and after them. */
interface Amount {
  readonly between: readonly string[];
  readonly names: readonly Name[];
}

const amounts = new Map<string, Amount>();

function amountIn(text: string): Amount {
  const known = amounts.get(text);
  if (known !== undefined) return known;
  if (amounts.size >= KEPT) amounts.clear();
  const amount = takenApart(text);
  amounts.set(text, amount);
  return amount;
}

function takenApart(text: string): Amount {
  const known = namesIn(text);
  if (known.length === 0) return { between: [JSON.stringify(text)], names: [] };
  const between: string[] = [];
  const names: Name[] = [];
  const tidied = JSON.stringify(tidy(text));
  let from = 0;
  for (const { 0: word, index } of tidied.matchAll(NAMES)) {
    if (!known.includes(word)) continue;
    between.push(tidied.slice(from, index));
    names.push(word);
    from = index + word.length;
  }
  between.push(tidied.slice(from));
  return { between, names };
}

function numberOf(name: Name, uses: Name[]): string {
  const at = uses.indexOf(name);
  return `$${at >= 0 ? at : uses.push(name) - 1}`;
}
