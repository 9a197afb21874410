import { expect } from 'vitest';
import type { StripList, StripProblem } from '#core/cloth/strips/strip-plan.ts';

/** Expects that strips hold every piece wanted, and that each fits the width. */
export function expectWhole({ usable, levels, demand }: StripProblem, strips: StripList): void {
  const placed = demand.map(() => 0);
  for (const { pattern, times } of strips) {
    const widths = levels[pattern.level]?.widths ?? [];
    let used = 0;
    for (const [kind, count] of pattern.counts.entries()) {
      placed[kind] = (placed[kind] ?? 0) + count * times;
      if (count > 0) used += count * (widths[kind] ?? Number.NaN);
    }
    expect(used).toBeLessThanOrEqual(usable + 1e-4);
    expect(Number.isInteger(times) && times > 0).toBe(true);
  }
  for (const [kind, wanted] of demand.entries()) {
    expect(placed[kind] ?? 0).toBeGreaterThanOrEqual(wanted);
  }
}
