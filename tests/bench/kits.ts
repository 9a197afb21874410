/**
 * What stash and kits cost: CPU of one answer of the core, from a request that was read to the figures,
 * over a fixed set of random requests. Medians and the 99th percentile are printed and nothing depends
 * on them. The greatest number of kits is also timed beside HiGHS on the same stocks.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { countKits, type KitStock } from '#core/kits/most-kits.ts';
import { planKits } from '#core/kits.ts';
import type { Outcome } from '#core/outcome.ts';
import { planStash } from '#core/stash.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { kitStocks } from '../support/kit-stocks.ts';
import { kitsRequests, stashRequests } from '../support/stash-and-kits-requests.ts';

const SEED = 20_260_401;
const CASES = 300;

const draw = <T>(arbitrary: fc.Arbitrary<T>) =>
  fc.sample(arbitrary, { numRuns: CASES, seed: SEED });

const stashes = draw(stashRequests).map(resolveStash);
const kits = draw(kitsRequests).map(resolveKits);
report('/v1/stash', measure(keepSound(stashes), planStash));
report('/v1/kits', measure(keepSound(kits), planKits));

const stocks = draw(kitStocks).filter((stock) => boundKits(stock) > 0);
const highs = await loadHighs();
const own = measure(stocks, countKits);
const solved = measure(stocks, (stock) => highs.solve(writeModel(stock)));
report('greatest number of kits', own);
report('the same by HiGHS', solved);
console.log(`  ratio of the medians ${(medianOf(solved) / medianOf(own)).toFixed(0)}`);

/** What was understood, of the requests that make sense. */
function keepSound<T>(read: readonly Outcome<T>[]): readonly T[] {
  return read.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
}

/** Milliseconds for each case: the least of three goes after a warm-up. */
function measure<T>(cases: readonly T[], run: (one: T) => unknown): readonly number[] {
  for (const one of cases.slice(0, 60)) run(one);
  return cases.map((one) => {
    const goes = [0, 1, 2].map(() => {
      const start = performance.now();
      run(one);
      return performance.now() - start;
    });
    return Math.min(...goes);
  });
}

function report(name: string, times: readonly number[]): void {
  const sorted = times.toSorted((one, other) => one - other);
  const p99 = sorted[Math.floor(0.99 * sorted.length)] ?? Number.NaN;
  console.log(`${name}: median ${medianOf(times).toFixed(4)} ms, p99 ${p99.toFixed(4)} ms`);
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

function boundKits({ prints, perKit }: KitStock): number {
  return Math.floor(prints.reduce((sum, { squares }) => sum + squares, 0) / perKit);
}

/** Every kit by itself, as in the oracle, with the squares counted beforehand. */
function writeModel(stock: KitStock): string {
  const { prints, others, perKit, distinct } = stock;
  const all = Array.from({ length: boundKits(stock) }, (_, kit) => kit);
  const each = (write: (print: number) => string) => prints.map((_, at) => write(at)).join(' + ');
  const backing = others[0]?.squares ?? 0;
  return [
    'Maximize',
    `obj: ${all.map((t) => `u${t}`).join(' + ')}`,
    'Subject To',
    ...all.flatMap((t) => [
      `k${t}: ${each((j) => `x${t}_${j}`)} - ${perKit} u${t} = 0`,
      `d${t}: ${each((j) => `y${t}_${j}`)} - ${distinct} u${t} >= 0`,
      ...prints.flatMap(({ most }, j) => [
        `m${t}_${j}: x${t}_${j} - ${most} y${t}_${j} <= 0`,
        `l${t}_${j}: x${t}_${j} - y${t}_${j} >= 0`,
      ]),
      ...(t === 0 ? [] : [`o${t}: u${t - 1} - u${t} >= 0`]),
    ]),
    ...prints.map(
      ({ squares }, j) => `t${j}: ${all.map((t) => `x${t}_${j}`).join(' + ')} <= ${squares}`,
    ),
    `b: ${all.map((t) => `${perKit} u${t}`).join(' + ')} <= ${backing}`,
    'General',
    ...all.map((t) => prints.map((_, j) => `x${t}_${j}`).join(' ')),
    'Binary',
    ...all.map((t) => [`u${t}`, ...prints.map((_, j) => `y${t}_${j}`)].join(' ')),
    'End',
  ].join('\n');
}
