import axe from 'axe-core';

/**
 * Runs every axe rule on a part of this very page, open shadow roots included.
 *
 * @returns one line for each broken rule and place; what a whole page owes, such as landmarks, is not asked of a part.
 */
export async function findBrokenRules(part: Element): Promise<readonly string[]> {
  const rules = { region: { enabled: false }, 'page-has-heading-one': { enabled: false } };
  const { violations } = await axe.run(part, { rules });
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id} at ${node.target.join(' ')}: ${node.failureSummary ?? ''}`),
  );
}
