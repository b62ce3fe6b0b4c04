import type { Givens, Sheet } from '../../drafting/sheet.ts';
import { replay } from '../../drafting/replay.ts';
import type { Expression, Name, Step } from '../../drafting/step.ts';
import { personNamed } from '../../garment/people.ts';
import { dealOrder } from '../../grader/deal.ts';
import type { Box } from '../../table/drawing/box.ts';
import { say } from '../../words/say.ts';
import { AuthoringError } from '../authoring-error.ts';
import { builtReader } from '../reader.ts';

/** Whom a figure is drawn for, and in which style. */
export interface SceneOrder {
  /** Id of an invented person. */
  readonly person: string;
  readonly style: Readonly<Record<Name, Expression>>;
  /** House rule to choice; rules left out take their usual choice. */
  readonly house?: Readonly<Record<string, string>>;
}

/** An area of cloth: a closed curve of the draft, seen from its right side or from the other. */
export interface SceneCloth {
  readonly outline: Name;
  readonly side: 'right' | 'other';
}

/** A figure of a lesson: a draft, and how much of it is shown. Everything in it is replayed in a test. */
export interface Scene {
  readonly id: string;
  readonly order: SceneOrder;
  readonly steps: readonly Step[];
  /** Objects of the block that are drawn. */
  readonly shows: readonly Name[];
  /** Objects of the draft drawn as construction lines. */
  readonly help?: readonly Name[];
  /** Objects of the draft that are not drawn. */
  readonly hides?: readonly Name[];
  /** Whose names are written. */
  readonly labels: readonly Name[];
  readonly cloth?: readonly SceneCloth[];
  /** The part of the sheet that is shown, mm. */
  readonly box: Box;
}

/** What lies on the table for a scene; an authoring error when its order cannot be dealt. */
export function sceneGivens({ id, order }: Pick<Scene, 'id' | 'order'>): Givens {
  const person = personNamed(order.person);
  if (!person) throw new AuthoringError(`The figure “${id}” is for “${order.person}”, and there is no such person in src/garment/people.ts.`);
  const dealt = dealOrder({ figure: person.figure, style: order.style, house: order.house ?? {} });
  if (!dealt.ok) throw new AuthoringError(`The order of the figure “${id}” cannot be dealt. ${say(dealt.message, builtReader)}`);
  return dealt.givens;
}

/** The scene replayed; an authoring error when a step cannot be carried out. */
export function sceneSheet(scene: Pick<Scene, 'id' | 'order' | 'steps'>): Sheet {
  const sheet = replay(sceneGivens(scene), scene.steps);
  const problem = sheet.problems[0];
  if (problem) {
    throw new AuthoringError(`Step ${problem.step + 1} (${problem.name}) of the figure “${scene.id}” cannot be carried out. ${say(problem.message, builtReader)}`);
  }
  return sheet;
}
