import { namesUsedBy } from '../drafting/dependencies.ts';
import type { Quantity } from '../drafting/quantity.ts';
import { instructionOf } from '../drafting/sentence.ts';
import type { Sheet } from '../drafting/sheet.ts';
import type { Expression, Name } from '../drafting/step.ts';
import { personNamed } from '../garment/people.ts';
import { angleFrom } from '../geometry/line.ts';
import { angleText, lengthText } from '../words/length.ts';
import { nameText } from '../words/say.ts';
import type { Unit } from '../words/unit.ts';
import { AuthoringError } from './authoring-error.ts';
import { lengthFrom } from './both-units.ts';
import { type Scene, sceneSheet } from './figures/scene.ts';
import { LANGUAGE } from './reader.ts';

/**
 * What is read off a worked draft: a length by an expression that may name what was taped, the angle between two lines, or
 * an angle that is given or was read with the protractor.
 */
export type Reading =
  | { readonly says: string; readonly is: Expression }
  | { readonly says: string; readonly between: readonly [Name, Name] }
  | { readonly says: string; readonly angle: Name };

/** A reading worked out: a length in mm, or an angle in words. */
export type ReadOff =
  | { readonly says: string; readonly mm: number }
  | { readonly says: string; readonly angle: string };

/** A step as a drafting instruction, what its object is called, and what a tape or a protractor comes to in it. */
export interface WorkedStep {
  readonly says: string;
  /** Null for what is only read, unless a later step goes on with it. */
  readonly called: string | null;
  readonly reads: string | null;
}

/** The steps of a scene from the one it begins with, with the values of what they name. */
export function workedSteps(scene: Scene, unit: Unit): readonly WorkedStep[] {
  const { measures } = sceneSheet(scene);
  const reader = { language: LANGUAGE, unit };
  const listed = scene.steps.slice(firstListed(scene));
  const used = new Set(listed.flatMap(namesUsedBy));
  return listed.map((step) => {
    const read = measures.get(step.name);
    return {
      says: instructionOf(step, reader, measures),
      called: read && !used.has(step.name) ? null : nameText(step.name, reader),
      // What a tape is set to stands in its sentence already.
      reads: read && !('length' in step) ? quantityText(read, unit) : null,
    };
  });
}

function quantityText({ dimension, value }: Quantity, unit: Unit): string {
  return dimension === 'angle' ? angleText(value) : lengthText(value, unit);
}

function firstListed({ id, begins, steps }: Scene): number {
  if (begins === undefined) return 0;
  const first = steps.findIndex(({ name }) => name === begins);
  if (first < 0) throw new AuthoringError(`The worked figure “${id}” begins with “${begins}”, and has no such step.`);
  return first;
}

/** A reading of the replayed scene; an authoring error when it names what is not there. */
export function readOff(scene: Scene, reading: Reading): ReadOff {
  const sheet = sceneSheet(scene);
  if ('is' in reading) return { says: reading.says, mm: lengthFrom(reading.is, sheet.measures) };
  if ('angle' in reading) return { says: reading.says, angle: angleText(angleNamed(scene, sheet, reading.angle)) };
  const [from, to] = reading.between.map((name) => lineNamed(scene, sheet, name)) as [Line, Line];
  return { says: reading.says, angle: angleText(Math.abs(angleFrom(from, to))) };
}

function angleNamed({ id }: Scene, sheet: Sheet, name: Name): number {
  const quantity = sheet.measures.get(name);
  if (quantity?.dimension !== 'angle')
    throw new AuthoringError(`A reading of “${id}” names the angle “${name}”, and the draft has none.`);
  return quantity.value;
}

type Line = Parameters<typeof angleFrom>[0];

function lineNamed({ id }: Scene, sheet: Sheet, name: Name): Line {
  const shape = sheet.shapes.get(name);
  if (shape?.kind !== 'line')
    throw new AuthoringError(`A reading of “${id}” names the line “${name}”, and the draft has none.`);
  return shape.line;
}

/** The readings of the same draft made for other people, a row each; an authoring error where there is no such person. */
export function comparedFor(
  scene: Scene,
  people: readonly string[],
  readings: readonly Reading[],
): readonly { readonly name: string; readonly read: readonly ReadOff[] }[] {
  return people.map((id) => {
    const person = personNamed(id);
    if (!person)
      throw new AuthoringError(`A comparison names “${id}”, and there is no such person in src/garment/people.ts.`);
    const theirs = { ...scene, order: { ...scene.order, figure: person.figure } };
    return { name: person.name, read: readings.map((reading) => readOff(theirs, reading)) };
  });
}
