import * as v from 'valibot';

const KEY = 'ragbloom-ticks';
/** Plans whose ticks are kept; the oldest goes first. */
const MOST_PLANS = 12;

const ticksSchema = v.pipe(
  v.array(v.object({ plan: v.string(), done: v.array(v.string()) })),
  v.maxLength(MOST_PLANS),
);
type Ticks = v.InferOutput<typeof ticksSchema>;

/**
 * The steps of a plan that were ticked on this device.
 * Where storage throws, is empty or holds something else, none.
 *
 * @param plan the canonical query of the plan.
 */
export function readTicks(plan: string): readonly string[] {
  return readAll().find((row) => row.plan === plan)?.done ?? [];
}

/** Keeps the ticked steps of a plan on this device; where storage throws, nothing is kept. */
export function keepTicks(plan: string, done: readonly string[]): void {
  const others = readAll().filter((row) => row.plan !== plan);
  const rows = [{ plan, done }, ...others].slice(0, MOST_PLANS);
  try {
    localStorage.setItem(KEY, JSON.stringify(rows));
  } catch {
    // A page in a sandbox has no storage, and a full one refuses: the ticks last as long as the page.
  }
}

function readAll(): Ticks {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return v.is(ticksSchema, stored) ? stored : [];
  } catch {
    return [];
  }
}
