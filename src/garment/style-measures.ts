/** What may be chosen about a front and its collar. All are lengths; ranges in mm. */
export interface StyleMeasure {
  readonly name: string;
  /** What the reader of styles accepts. Common practice, no source, unless `source` says otherwise. */
  readonly least: number;
  readonly most: number;
  /** What is usual on a jacket. */
  readonly usual: readonly [number, number];
  readonly source: string;
  /** Measures of one part grow and shrink together in another customer's style, so that the fall stays above the stand. */
  readonly part: 'front' | 'button' | 'break' | 'collar' | 'gorge' | 'notch' | 'lapel' | 'end';
}

const INCH = 25.4;

/** Every style measure, in the order they are met on the draft. What each one is, in a sentence: `about.<name>` in the catalogue. */
export const styleMeasures: readonly StyleMeasure[] = [
  {
    name: 'overlap',
    least: 10,
    most: 130,
    usual: [INCH, 1.75 * INCH],
    source: 'At least 1 in on a jacket: common practice, no source. 1 3/4 in on an overcoat: Vincent 1898, p. 20.',
    part: 'front',
  },
  {
    name: 'button',
    least: 8,
    most: 50,
    usual: [0.5 * INCH, 1.25 * INCH],
    source: 'Common practice, no source.',
    part: 'button',
  },
  {
    name: 'button-to-edge',
    least: 8,
    most: 60,
    usual: [0.75 * INCH, 1.5 * INCH],
    source: 'Common practice, no source.',
    part: 'button',
  },
  {
    name: 'break-rise',
    least: 0,
    most: 250,
    usual: [1.25 * INCH, 1.75 * INCH],
    source: 'Common practice, no source.',
    part: 'break',
  },
  {
    name: 'break-rise-high',
    least: 40,
    most: 400,
    usual: [4 * INCH, 9 * INCH],
    source: 'For a front with three or four buttons. Common practice, no source.',
    part: 'break',
  },
  {
    name: 'top-button-rise',
    least: 0,
    most: 350,
    usual: [0, 6 * INCH],
    source: 'Common practice, no source.',
    part: 'break',
  },
  {
    name: 'break-above-button',
    least: 0,
    most: 60,
    usual: [0.25 * INCH, 1 * INCH],
    source: 'Common practice, no source: no period source was found that ties the break point to the top button.',
    part: 'button',
  },
  {
    name: 'stand',
    least: 12,
    most: 60,
    usual: [INCH, 1.75 * INCH],
    source:
      '1 to 1 1/4 in: Vincent, Ladies, Diagram 105; MTOC 1949, Diagram 25. Up to 1 3/4 in: common practice, no source.',
    part: 'collar',
  },
  {
    name: 'fall',
    least: 15,
    most: 120,
    usual: [1.375 * INCH, 2.25 * INCH],
    source: '1 5/8 to about 2 in: Vincent, Ladies, Diagram 105; MTOC 1949, Diagram 25.',
    part: 'collar',
  },
  {
    name: 'cloth-turn',
    least: 0,
    most: 15,
    usual: [0.125 * INCH, 0.375 * INCH],
    source: '1/8 in for a suiting to 3/8 in for a heavy coating: common practice, no source.',
    part: 'collar',
  },
  {
    name: 'gorge-depth',
    least: 15,
    most: 150,
    usual: [1.5 * INCH, 3 * INCH],
    source: 'Common practice, no source.',
    part: 'gorge',
  },
  {
    name: 'notch-width',
    least: 20,
    most: 150,
    usual: [2 * INCH, 3 * INCH],
    source: 'Common practice, no source.',
    part: 'notch',
  },
  {
    name: 'notch-drop',
    least: 0,
    most: 100,
    usual: [0, INCH],
    source: '1/2 in below the collarbone level: common practice, no source.',
    part: 'notch',
  },
  {
    name: 'lapel-width',
    least: 30,
    most: 180,
    usual: [2.5 * INCH, 4.5 * INCH],
    source: 'Common practice, no source.',
    part: 'lapel',
  },
  {
    name: 'peak-rise',
    least: 10,
    most: 90,
    usual: [INCH, 2 * INCH],
    source: 'Common practice, no source.',
    part: 'lapel',
  },
  {
    name: 'collar-end',
    least: 15,
    most: 120,
    usual: [1.25 * INCH, 2.5 * INCH],
    source: '1 1/2 in: MTOC 1949, Diagram 25 A.',
    part: 'end',
  },
];

/** The style measure of this name; null when there is none. */
export function styleMeasureNamed(name: string): StyleMeasure | null {
  return styleMeasures.find((one) => one.name === name) ?? null;
}
