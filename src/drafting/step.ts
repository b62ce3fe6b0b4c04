/** Names are lower-case words joined by hyphens: `roll-line`, `mark-2`. */
export type Name = string;

/** An expression as typed: `overlap`, `stand + 6 mm`, `1 1/4 in`, `22.5 deg`. */
export type Expression = string;

/** The four ways across the sheet: left is toward the front edge, right toward the shoulder tip, up toward the shoulder. */
export type Direction = 'left' | 'right' | 'up' | 'down';

/** A direction, or the name of a point to go toward. */
export type Toward = Direction | Name;

/** Which of several crossings is meant: the one furthest in a direction, nearest a named point, or nearest a place (x, y in mm). */
export type Near = Toward | readonly [number, number];

export type Turn = 'clockwise' | 'anticlockwise';

/** How a curve leaves or arrives: running along a line, or square to it. */
export type Heading = { readonly along: Name } | { readonly square: Name };

/**
 * How a curve passes one of its points. `turn` is the angle in radians, anticlockwise, from the chord between the
 * neighbouring points (at an end: the chord to the next point) to the curve's direction; it is not used where a
 * heading rules. `before` and `after` are handle lengths as fractions of the chords of the spans on either side.
 */
export interface Passing {
  readonly turn: number;
  readonly before: number;
  readonly after: number;
}

/** A part of a curve or line between two points on it. */
export interface Part {
  readonly along: Name;
  readonly from: Name;
  readonly to: Name;
}

interface Common {
  /** The name of what the step makes; unique on the sheet. */
  readonly name: Name;
  /** The target this step answers: "this is my break point". */
  readonly answers?: Name;
}

export interface Pencil extends Common {
  readonly verb: 'pencil';
  /** Where the mark was made by eye: x, y in mm. */
  readonly at: readonly [number, number];
}
export interface Along extends Common {
  readonly verb: 'along';
  readonly on: Name;
  readonly from: Name;
  readonly distance: Expression;
  readonly toward: Toward;
}
export interface Cross extends Common {
  readonly verb: 'cross';
  readonly one: Name;
  readonly other: Name;
  readonly near?: Near;
}
export interface Compass extends Common {
  readonly verb: 'compass';
  readonly about: Name;
  readonly radius: Expression;
  readonly on: Name;
  readonly near: Near;
}
export interface Foot extends Common {
  readonly verb: 'foot';
  readonly from: Name;
  readonly on: Name;
}
export interface PartWay extends Common {
  readonly verb: 'part';
  readonly from: Name;
  readonly to: Name;
  readonly fraction: Expression;
}
export interface Rule extends Common {
  readonly verb: 'rule';
  readonly from: Name;
  readonly to: Name;
}
export interface Square extends Common {
  readonly verb: 'square';
  /** A line; or a curve, and then square to it at the place nearest `through`. */
  readonly to: Name;
  readonly through: Name;
}
export interface Parallel extends Common {
  readonly verb: 'parallel';
  readonly to: Name;
  readonly distance: Expression;
  readonly side: Toward;
}
export interface ParallelThrough extends Common {
  readonly verb: 'parallel';
  readonly to: Name;
  readonly through: Name;
}
export interface Slant extends Common {
  readonly verb: 'slant';
  readonly to: Name;
  readonly angle: Expression;
  readonly turn: Turn;
  readonly through: Name;
}
export interface CurveThrough extends Common {
  readonly verb: 'curve';
  readonly through: readonly Name[];
  readonly leave?: Heading;
  readonly arrive?: Heading;
  /** One entry a point of `through`; null where the curve finds its own way. */
  readonly shape?: readonly (Passing | null)[];
}
export interface Offset extends Common {
  readonly verb: 'offset';
  readonly of: Name;
  readonly distance: Expression;
  readonly side: Toward;
}
export interface Seam extends Common {
  readonly verb: 'seam';
  /** Points are joined by straight runs; curves, and parts of curves, come in at their nearer end. */
  readonly run: readonly (Name | Part)[];
}
export interface Fold extends Common {
  readonly verb: 'fold';
  readonly what: Name;
  readonly over: Name;
}
export interface Swing extends Common {
  readonly verb: 'swing';
  readonly what: Name;
  readonly about: Name;
  /** The arc laid off at radius `at`: the angle is `by / at` radians. */
  readonly by: Expression;
  readonly at: Expression;
  readonly turn: Turn;
}
export interface SwingAngle extends Common {
  readonly verb: 'swing';
  readonly what: Name;
  readonly about: Name;
  readonly angle: Expression;
  readonly turn: Turn;
}
export interface Tape extends Common {
  readonly verb: 'tape';
  readonly along: Name;
  /** Without ends the whole curve is taped; a line needs both. */
  readonly from?: Name;
  readonly to?: Name;
}
export interface TapeBetween extends Common {
  readonly verb: 'tape';
  readonly from: Name;
  readonly to: Name;
}
export interface TapeSet extends Common {
  readonly verb: 'tape';
  /** A length worked out, and so given a name. */
  readonly length: Expression;
}
export interface Protractor extends Common {
  readonly verb: 'protractor';
  /** Two lines; the angle between them is 0 to 90 degrees. */
  readonly from: Name;
  readonly to: Name;
}
export interface ProtractorAlong extends Common {
  readonly verb: 'protractor';
  /** A curve or seam, whose turn from start to end is read. */
  readonly along: Name;
}

/** One step of a draft. The forms of `parallel`, `swing`, `tape` and `protractor` differ by their fields. */
export type Step =
  | Pencil
  | Along
  | Cross
  | Compass
  | Foot
  | PartWay
  | Rule
  | Square
  | Parallel
  | ParallelThrough
  | Slant
  | CurveThrough
  | Offset
  | Seam
  | Fold
  | Swing
  | SwingAngle
  | Tape
  | TapeBetween
  | TapeSet
  | Protractor
  | ProtractorAlong;

export type Verb = Step['verb'];
