import type { Name } from '../../drafting/step.ts';
import type { Path } from '../../geometry/cubic.ts';
import type { Point } from '../../geometry/point.ts';
import type { Message } from '../../words/message.ts';
import type { Box } from './box.ts';

/**
 * What a line means, which decides how it looks: weight, dash and label carry it as well as colour.
 * `given` the block; `made` the draft; `help` a construction line; `roll` a fold; `red` the marker's hand;
 * `right` where it should be; `preview` what the step in hand would make; `cue` what the pointer has caught; `class` one
 * of many drafts laid over one another.
 */
export type Tone = 'given' | 'made' | 'help' | 'roll' | 'red' | 'right' | 'preview' | 'cue' | 'class';

interface Common {
  /** The object it shows; null when it shows none. */
  readonly name: Name | null;
  readonly tone: Tone;
  /** What it is named with, where words name several parts together. */
  readonly group?: Name;
}

export interface LinePart extends Common {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  /** The rest of an unbounded line, out to the edge of the sheet, drawn faintly. */
  readonly faint: boolean;
}
export interface CurvePart extends Common {
  readonly kind: 'curve';
  readonly path: Path;
}
export interface MarkPart extends Common {
  readonly kind: 'mark';
  readonly at: Point;
}
/** From where it is to where it should be, or a dimension. */
export interface ArrowPart extends Common {
  readonly kind: 'arrow';
  readonly from: Point;
  readonly to: Point;
}
/** A stroke of a width in mm: what a tolerance allows about a right shape. A point is a run of no length. */
export interface BandPart extends Common {
  readonly kind: 'band';
  readonly path: Path | readonly [Point, Point];
  readonly half: number;
}
/** An area of cloth: its right side, or, hatched, its other side. */
export interface ClothPart extends Common {
  readonly kind: 'cloth';
  readonly outline: Path;
  readonly side: 'right' | 'other';
}

export type Part = LinePart | CurvePart | MarkPart | ArrowPart | BandPart | ClothPart;

/** Words on the sheet. They are placed about the anchor, so that they do not lie on one another. */
export interface Label {
  /** A point, or the corners of a line along which the words may sit. */
  readonly by: Point | readonly Point[];
  /** The object they name: they are seated where nothing else can be meant, or left out. Without it they are a note, which is written wherever it lies on the least. */
  readonly of?: Name;
  readonly words: Message;
  readonly tone: Tone;
  /** Names that have to be written: where nothing else will do they are seated as a note is. */
  readonly must?: true;
}

/** A sheet ready to be painted: by the page as SVG, or by the awake table. In mm, y up. */
export interface Drawing {
  readonly box: Box;
  /** Distance between the dots of the marking paper, mm. */
  readonly dots: number;
  /** Their radius, mm, where the sheet is shown so large that they would be taken for marks; 0.6 when absent. */
  readonly dot?: number;
  readonly parts: readonly Part[];
  readonly labels: readonly Label[];
  /** What it shows, for those who hear it. */
  readonly says: readonly Message[];
}
