/**
 * What the least length of several sizes on a roll costs: CPU of one case, the share proven, and the
 * same cases by HiGHS on the complete pattern model, in the same run. Printed; nothing depends on it.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { listStrips, solveStrips } from '../support/pattern-model.ts';
import { FAMILIES, type StripCase, type StripFamily, stripCases } from '../support/strip-cases.ts';

const SEED = 20_260_401;
const CASES = 400;
/** Steps that a request of one fabric of six sizes is given, as `api/core/yardage.ts` counts them. */
const GRANTED = 80_000;
/** Cases that HiGHS is asked too, each with so many seconds. */
const ASKED = 20;
const SECONDS = 10;

const highs = await loadHighs();
const sizes = [
  { name: '1 to 6 sizes', min: 1, max: 6 },
  { name: '6 sizes', min: 6, max: 6 },
  { name: '12 sizes', min: 12, max: 12 },
  { name: '24 sizes', min: 24, max: 24 },
] as const;

console.log('Least length of strips, up to 200 pieces; CPU in ms of one case');
for (const { name, min, max } of sizes) {
  for (const [family, units] of Object.entries(FAMILIES)) {
    const cases = fc.sample(stripCases(units, { min, max }), { numRuns: CASES, seed: SEED });
    for (const one of cases.slice(0, CASES / 2)) leastStrips(one.kinds, one.usable);
    print(`${name}, ${family}`, cases);
  }
}

for (const [family, units] of Object.entries(FAMILIES)) compare(family, units);

function print(name: string, cases: readonly StripCase[]): void {
  const runs = cases.map(measure);
  const times = runs.map(({ cpu }) => cpu).sort((one, other) => one - other);
  const proven = runs.filter(({ optimal }) => optimal).length / runs.length;
  const gap = runs.reduce((sum, run) => sum + run.gap, 0) / runs.length;
  console.log(
    [
      name.padEnd(26),
      `median ${at(times, 0.5)}`,
      `p90 ${at(times, 0.9)}`,
      `p99 ${at(times, 0.99)}`,
      `proven ${(100 * proven).toFixed(1).padStart(5)} %`,
      `mean gap ${(100 * gap).toFixed(3)} %`,
    ].join('  '),
  );
}

function at(sorted: readonly number[], share: number): string {
  return (sorted[Math.floor(share * sorted.length)] ?? Number.NaN).toFixed(2).padStart(6);
}

function measure({ kinds, usable }: StripCase) {
  const before = process.cpuUsage();
  const { optimal, length, bound } = leastStrips(kinds, usable, { steps: GRANTED });
  const { user, system } = process.cpuUsage(before);
  return { cpu: (user + system) / 1000, optimal, gap: (length - bound) / length };
}

/** The same cases by both, their strips listed for HiGHS outside its time. */
function compare(family: string, units: StripFamily): void {
  const cases = fc.sample(
    stripCases(units, { min: 6, max: 6 }).filter((one) => listStrips(one).length <= 3000),
    { numRuns: ASKED, seed: SEED },
  );
  const ratios: number[] = [];
  let ours = 0;
  let theirs = 0;
  let differing = 0;
  for (const one of cases) {
    const cpu = measure(one).cpu;
    const { length, optimal } = leastStrips(one.kinds, one.usable);
    const before = process.cpuUsage();
    const least = solveStrips(highs, one, { unit: units.unit, seconds: SECONDS });
    const { user, system } = process.cpuUsage(before);
    ours += cpu;
    theirs += (user + system) / 1000;
    ratios.push((user + system) / 1000 / cpu);
    if (optimal && least !== undefined && Math.abs(length / units.unit - least) > 1e-3)
      differing += 1;
  }
  ratios.sort((one, other) => one - other);
  console.log(
    `HiGHS on ${ASKED} cases of 6 sizes, ${family}: ${(theirs / ASKED).toFixed(0)} ms a case, ours ${(ours / ASKED).toFixed(2)} ms; ` +
      `${(theirs / ours).toFixed(0)} times in all, ${(ratios[ASKED / 2] ?? Number.NaN).toFixed(0)} times in the median; ${differing} differ`,
  );
}
