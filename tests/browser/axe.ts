import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** The rules of WCAG 2.2, levels A and AA, as axe-core tags them. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** What axe looks at that hangs on colours, and so may be another in the dark. All else was looked at in the light. */
const COLOURS = ['color-contrast', 'link-in-text-block'];

/** What was found, by rule and element. */
type Violations = Awaited<ReturnType<AxeBuilder['analyze']>>['violations'];

/** Expects axe to find nothing on the page as it stands. What it finds is told by rule and element. */
export async function axe(page: Page): Promise<void> {
  // No page has a frame, so axe runs in the page itself: the other way opens a second page for every look. Elements are
  // named only where something is wrong.
  const look = new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).withTags(TAGS);
  expect(toldOf((await look.setLegacyMode().analyze()).violations)).toEqual([]);
}

/** Expects axe to find no fault in the colours of a page on which `axe` found none in another scheme: it is there still, and need not be brought again. */
export async function axeColours(page: Page): Promise<void> {
  const violations = await page.evaluate(async (values) => {
    const { axe: there } = window as unknown as { readonly axe: AxeHere };
    return (await there.run(document, { runOnly: { type: 'rule', values }, resultTypes: ['violations'] })).violations;
  }, COLOURS);
  expect(toldOf(violations)).toEqual([]);
}

interface AxeHere {
  readonly run: (context: Document, options: object) => Promise<{ readonly violations: Violations }>;
}

function toldOf(violations: Violations): readonly string[] {
  return violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id} (${help}): ${target}`));
}
