import type { Sheet } from '../../drafting/sheet.ts';
import type { Expression, Name, Step } from '../../drafting/step.ts';
import { personNamed } from '../../garment/people.ts';
import { dealOrder } from '../../grader/deal.ts';
import type { Order } from '../../grader/order.ts';
import type { Drawing } from '../../table/drawing/drawing.ts';
import { atRest, type LiveHandle, type LiveScene } from '../../table/live/live-scene.ts';
import { liveDrawing, liveSheet } from '../../table/live/live-sheet.ts';
import { say, saySentence } from '../../words/say.ts';
import type { Unit } from '../../words/unit.ts';
import { AuthoringError } from '../authoring-error.ts';
import { builtReader } from '../reader.ts';
import { viewAtEnd } from './view-at-end.ts';

/** A figure of a lesson. Everything in it is replayed in a test. What it says is the lesson's; without handles it holds still. */
export interface Scene extends Omit<LiveScene, 'says' | 'pictures' | 'handles'> {
  readonly id: string;
  readonly handles?: readonly LiveHandle[];
  /** In a worked example, the first step that is listed: what comes before it is drawn already. */
  readonly begins?: Name;
}

/** What a lesson says with a figure: of its picture at rest, and, as an ICU message, of what it has measured. */
export interface Spoken {
  readonly pictures?: string;
  readonly says?: string;
}

/** The scene as the table's live figure takes it, with what is said of it. */
export function asLive(scene: Scene, spoken: Spoken = {}): LiveScene {
  const { id: _, begins: __, handles = [], ...rest } = scene;
  return { ...rest, handles, ...spoken };
}

/** The picture of a scene at rest: its sheet, or what its box shows of the view that stands in place of it. */
export function paint(scene: Scene, unit: Unit): Drawing {
  const sheet = sceneSheet(scene);
  if (!scene.view?.alone) return liveDrawing(asLive(scene), sheet, unit);
  const drawing = viewAtEnd(scene.view, sheet, unit);
  if (!drawing) throw new AuthoringError(`The figure “${scene.id}” has not drafted what its view shows.`);
  return { ...drawing, box: scene.box };
}

/** An order for an invented person; an authoring error when there is no such person. House rules left out take their usual choice. */
export function orderOf(
  person: string,
  style: Readonly<Record<Name, Expression>>,
  house: Readonly<Record<string, string>> = {},
): Order {
  const { figure } = personNamed(person) ?? {};
  if (!figure)
    throw new AuthoringError(`A figure is for “${person}”, and there is no such person in src/garment/people.ts.`);
  return { figure, style, house };
}

/** The scene replayed at rest; an authoring error when its order cannot be dealt, or a step cannot be carried out. */
export function sceneSheet(scene: Scene): Sheet {
  const dealt = dealOrder(scene.order);
  if (!dealt.ok) {
    throw new AuthoringError(
      `The order of the figure “${scene.id}” cannot be dealt. ${say(dealt.message, builtReader)}`,
    );
  }
  const sheet = liveSheet(asLive(scene), atRest);
  const problem = sheet.problems[0];
  if (problem) {
    const where = `Step ${problem.step + 1} (${problem.name}) of the figure “${scene.id}”`;
    throw new AuthoringError(`${where} cannot be carried out. ${saySentence(problem.message, builtReader)}`);
  }
  return sheet;
}

/** Where a step of a draft puts its mark, so that a free mark can be laid there to be dragged. */
export function placeOf(order: Order, steps: readonly Step[], name: Name): readonly [number, number] {
  const shape = sceneSheet({ id: name, order, steps, shows: [], labels: [], box: nowhere }).shapes.get(name);
  if (shape?.kind !== 'point') throw new AuthoringError(`No step of the draft marks a point called “${name}”.`);
  return [shape.point.x, shape.point.y];
}

const nowhere = { min: { x: 0, y: 0 }, max: { x: 0, y: 0 } };
