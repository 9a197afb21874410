/** Before the address of a plan in the names under which its ticks are kept. */
const PREFIX = 'ragbloom-ticks ';

/**
 * The steps of a plan that were ticked on this device; none where storage throws or knows nothing of it.
 *
 * @param plan the canonical address of the plan.
 */
export function readTicks(plan: string): readonly string[] {
  try {
    return localStorage.getItem(PREFIX + plan)?.split(' ') ?? [];
  } catch {
    return [];
  }
}

/** Keeps the ticked steps of a plan on this device; with none left, nothing is kept. */
export function keepTicks(plan: string, done: readonly string[]): void {
  try {
    if (done.length > 0) localStorage.setItem(PREFIX + plan, done.join(' '));
    else localStorage.removeItem(PREFIX + plan);
  } catch {
    // A page in a sandbox has no storage, and a full one refuses: the ticks last as long as the page.
  }
}
