/** Numbers that the yardstick sorts and sums. */
const LENGTH = 20_000;
const RUNS = 15;

/**
 * CPU of a fixed piece of work that has nothing to do with ours, ms: the least of a few runs. What other
 * work costs in such sticks is much the same on a fast machine, a slow one and one that is shared.
 */
export function timeYardstick(): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < RUNS; run += 1) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

/** Some of all that ours does: whole numbers, objects, text. */
function work(): number {
  let state = 7;
  const rows = Array.from({ length: LENGTH }, (_, at) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return { at, value: state };
  });
  const text = JSON.stringify(rows.toSorted((one, other) => one.value - other.value));
  return text.length + (JSON.parse(text) as readonly object[]).length;
}
