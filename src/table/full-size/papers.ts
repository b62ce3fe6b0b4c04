/** The papers a draft is printed on. */
export const PAPERS = ['a4', 'a3', 'a0', 'letter', 'tabloid'] as const;
export type Paper = (typeof PAPERS)[number];

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Sizes upright, mm: the A series of ISO 216; letter and ledger (17 in high: "tabloid") of ANSI/ASME Y14.1. */
export const SIZES: Readonly<Record<Paper, Size>> = {
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
  a0: { width: 841, height: 1189 },
  letter: { width: 215.9, height: 279.4 },
  tabloid: { width: 279.4, height: 431.8 },
};

/** White on all sides that no printer has to reach, mm. The style sheet gives it to the page. */
export const MARGIN = 10;

/** Within it, what lies about the frame, mm: the scales to its left and under it, and the line that says what this is. */
export const ABOUT = { left: 8, right: 1, top: 1, under: 13 } as const;

/** What is inside the margins, mm. */
export function printable(paper: Paper): Size {
  const { width, height } = SIZES[paper];
  return { width: width - 2 * MARGIN, height: height - 2 * MARGIN };
}

/** How much of the draft one sheet shows, mm: all within its frame. */
export function frameOf(paper: Paper): Size {
  const { width, height } = printable(paper);
  return { width: width - ABOUT.left - ABOUT.right, height: height - ABOUT.top - ABOUT.under };
}
