/** How the block is drawn: every number that is not a body measure, in one place. Lengths in mm. */
export const blockRules = {
  /** Added to the neck-base girth for the whole neckline of a jacket block. Common practice, no source. */
  neckEase: 15,
  /** The front neck is this much deeper than the neck is wide. Common practice, no source. */
  frontNeckDeeperThanWide: 8,
  /** Height of the neck point above the back neck point. Common practice, no source. */
  backNeckDepth: 22,
  /**
   * How far each handle of a neckline reaches toward the corner where its end directions meet: 4/3 (sqrt 2 - 1), the
   * fraction with which one cubic draws a quarter of a circle. The choice of curve is the project's own.
   */
  handleReach: (4 / 3) * (Math.SQRT2 - 1),
} as const;
