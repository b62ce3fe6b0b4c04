import { evaluate } from '../../../drafting/expression.ts';
import type { Givens } from '../../../drafting/sheet.ts';
import { isRanged } from '../../../exchange/class/laid/band.ts';
import type { Footing } from '../../../exchange/class/laid/footing.ts';
import { type Spread, spreadOf } from '../../../exchange/class/laid/spread.ts';
import { wayWords } from '../../../exchange/class/ways.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import { wayOf } from '../../../grader/way.ts';
import { type Message, message } from '../../../words/message.ts';
import { type ClassTarget, straysOf } from './class-target.ts';
import type { Lone } from './together.ts';

/** Below this, mm, answers lie on the right one for anyone who draws. */
const ON_IT = 0.5;

/** What a picture of a class shows: how many, how far apart, which way, and where some lie together. */
export function classSentences(answers: ClassTarget, footing: Footing, worked: number): readonly Message[] {
  // Nothing more is worth a word then, for nobody strayed.
  if (isAllRight(answers, worked)) return [message('class.all-right', { count: worked })];
  const strays = straysOf(answers);
  const right = answers.right.length;
  const spread = spreadOf(strays, footing);
  return [
    strays.length === worked
      ? message('class.right', { right, worked })
      : message('class.made', { made: strays.length, worked, right }),
    ...(spread === null || !hasStrays(answers) ? [] : spreadSentences(spread, strays.length)),
    ...gatheredSentences(answers),
  ];
}

/** Which misreadings come out there, and how often. */
function gatheredSentences({ gathered }: ClassTarget): readonly Message[] {
  if (gathered.length < 2)
    return gathered.map(({ way, strays }) =>
      message('class.gathered', { count: strays.length, way: { said: wayWords(way) } }),
    );
  const ways = gathered.map(({ way, strays }) =>
    message('class.gathered-one', { way: { said: wayWords(way) }, count: strays.length }),
  );
  return [message('class.gathered-several', { ways: { listed: ways } })];
}

/** Whether everyone who did it has it right. */
export function isAllRight({ right }: ClassTarget, worked: number): boolean {
  return right.length === worked;
}

/** Whether there is an answer on it that is not right, so that a picture has something to show. */
export function hasStrays(answers: ClassTarget): boolean {
  return answers.right.length < straysOf(answers).length;
}

/** How many lie together where nothing known comes out, how far off and which way. */
export function togetherSentence(bundle: readonly Lone[], footing: Footing): Message {
  const spread = spreadOf(
    bundle.map(({ stray }) => stray),
    footing,
  );
  const way = { said: wayOf(spread?.lean ?? { x: 0, y: 0 }) };
  return message('class.together', { count: bundle.length, way });
}

function spreadSentences(spread: Spread, count: number): readonly Message[] {
  const { furthest, at, lean } = spread;
  if (furthest < ON_IT) return [message('class.all-on')];
  const far = farSentence(spread, count);
  // Where half of them lie on it, or as many to this side as to that, there is no more to be said.
  if (Math.hypot(lean.x, lean.y) < ON_IT) return [far];
  const way = { said: wayOf(lean) };
  if (at === null) return [far, message('class.lean', { way })];
  return [far, at.name === null ? message('class.lean-most', { way }) : leanAt(at.name, way)];
}

function farSentence({ nearest, half, furthest }: Spread, count: number): Message {
  const most = { mm: furthest };
  // Do they all lie as far off, or is there one only?
  if (furthest - nearest < ON_IT) return message('class.all-off', { count, furthest: most });
  if (half < ON_IT) return message('class.half-on', { furthest: most });
  return message('class.half', { half: { mm: half }, furthest: most });
}

function leanAt(spot: string, way: { readonly said: Message }): Message {
  return message('class.lean-at', { spot: { named: spot }, way });
}

/** Why there is no chalk, where there is none. */
export function whyNoChalk({ checks }: Exercise, target: string, measures: Givens['measures']): Message {
  const ranged = checks.filter((check) => check.target === target && isRanged(check));
  const [only] = ranged;
  if (only === undefined) return message('class.single');
  // How far a run may stray from the right one is room about that one, and no range of right ones.
  const room = ranged.length === 1 && only.measure === 'shape' && only.most !== undefined ? only.most : null;
  const most = room === null ? null : evaluate(room, measures);
  return most?.ok ? message('class.room', { room: { stated: most.quantity.value } }) : message('class.range');
}
