import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * Runs every axe rule on a page, open shadow roots included.
 *
 * @returns one line for each broken rule and place: the rule, the place, what to change.
 */
export async function findViolations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: typeof axe }).axe.run(),
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id} at ${node.target.join(' ')}: ${node.failureSummary ?? ''}`),
  );
}
