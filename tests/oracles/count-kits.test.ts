/**
 * The greatest number of kits against HiGHS, a mixed-integer solver, on a model of another kind: every
 * kit by itself, with the squares of each print in it and whether it shows the print, and bolts cut
 * into whole strips. The condition and the bisection of the core stand nowhere in it.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { type Bolt, countBolt } from '#core/kits/count-bolt.ts';
import { countKits, type KitStock } from '#core/kits/most-kits.ts';
import { deepFreeze } from '../support/deep-freeze.ts';

const CASES = 300;
const CUT = 200;

interface Case {
  /** Bolts of each print. */
  readonly prints: readonly { readonly bolts: readonly Bolt[]; readonly most: number }[];
  readonly backing: Bolt;
  readonly perKit: number;
  readonly distinct: number;
}

const bolt = fc
  .record({
    width: fc.integer({ min: 250, max: 900 }),
    length: fc.integer({ min: 200, max: 2400 }),
  })
  .map(
    (size): Bolt => ({
      id: 'bolt',
      role: 'top',
      print: 'print',
      ...size,
      selvage: 10,
      squaring: 25,
      prewash: { length: 0, width: 0 },
    }),
  );

const cases: fc.Arbitrary<Case> = fc
  .record({
    prints: fc.array(
      fc.record({
        bolts: fc.array(bolt, { minLength: 1, maxLength: 2 }),
        most: fc.integer({ min: 1, max: 5 }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    backing: bolt.map((one) => ({ ...one, length: one.length * 4 })),
    perKit: fc.integer({ min: 4, max: 9 }),
    distinct: fc.integer({ min: 1, max: 4 }),
  })
  .map(deepFreeze);

function count({ prints, backing, perKit, distinct }: Case): number {
  const stock: KitStock = {
    prints: prints.map(({ bolts, most }) => ({
      squares: bolts.reduce((sum, one) => sum + countBolt(one, CUT).squares, 0),
      most,
    })),
    others: [{ role: 'backing', squares: countBolt(backing, CUT).squares, perKit }],
    perKit,
    distinct,
  };
  return countKits(stock);
}

/** Area of all cloth by area of a kit: more kits than this there cannot be. */
function boundKits({ prints, perKit }: Case): number {
  const area = prints.flatMap(({ bolts }) => bolts).reduce((sum, b) => sum + b.width * b.length, 0);
  return Math.floor(area / (CUT * CUT * perKit));
}

/** Of one bolt: strips·200 + 25 is no longer than it, and squares·200 no wider in each strip. */
function describeBolt(name: string, { width, length }: Bolt): readonly string[] {
  const across = Math.floor((width - 20) / CUT);
  return [
    `n${name}: ${CUT} s${name} <= ${length - 25}`,
    `q${name}: q${name} - ${across} s${name} = 0`,
  ];
}

function writeModel(own: Case): string {
  const { prints, backing, perKit, distinct } = own;
  const kits = Array.from({ length: boundKits(own) }, (_, kit) => kit);
  const each = (write: (print: number) => string) => prints.map((_, at) => write(at)).join(' + ');
  const rules = kits.flatMap((t) => [
    `k${t}: ${each((j) => `x${t}_${j}`)} - ${perKit} u${t} = 0`,
    `d${t}: ${each((j) => `y${t}_${j}`)} - ${distinct} u${t} >= 0`,
    ...prints.flatMap(({ most }, j) => [
      `m${t}_${j}: x${t}_${j} - ${most} y${t}_${j} <= 0`,
      `l${t}_${j}: x${t}_${j} - y${t}_${j} >= 0`,
    ]),
    ...(t === 0 ? [] : [`o${t}: u${t - 1} - u${t} >= 0`]),
  ]);
  const stock = prints.flatMap(({ bolts }, j) => [
    ...bolts.flatMap((one, at) => describeBolt(`${j}_${at}`, one)),
    `t${j}: ${kits.map((t) => `x${t}_${j}`).join(' + ')} - ${bolts.map((_, at) => `q${j}_${at}`).join(' - ')} <= 0`,
  ]);
  const all = kits.map((t) => `u${t}`);
  const squares = prints.flatMap(({ bolts }, j) => bolts.map((_, at) => `s${j}_${at} q${j}_${at}`));
  return [
    'Maximize',
    `obj: ${all.join(' + ')}`,
    'Subject To',
    ...rules,
    ...stock,
    ...describeBolt('b', backing),
    `b: ${all.map((one) => `${perKit} ${one}`).join(' + ')} - qb <= 0`,
    'General',
    ...kits.map((t) => prints.map((_, j) => `x${t}_${j}`).join(' ')),
    ...squares,
    'sb qb',
    'Binary',
    ...kits.map((t) => [`u${t}`, ...prints.map((_, j) => `y${t}_${j}`)].join(' ')),
    'End',
  ].join('\n');
}

describe('countKits beside HiGHS', () => {
  const pairs: { readonly own: Case; readonly solved: number }[] = [];
  beforeAll(async () => {
    const highs = await loadHighs();
    for (const own of fc.sample(cases, { numRuns: CASES, seed: inject('seed') })) {
      const isNothing = boundKits(own) === 0;
      const solution = isNothing ? undefined : highs.solve(writeModel(own));
      if (solution !== undefined) expect(solution.Status).toBe('Optimal');
      pairs.push({ own, solved: Math.round(solution?.ObjectiveValue ?? 0) });
    }
  }, 300_000);

  test(`countKits is what HiGHS finds in ${CASES} random cases`, () => {
    expect(pairs.map(({ own }) => count(own))).toEqual(pairs.map(({ solved }) => solved));
  });

  test('the cases are worth it: many with several kits, many where each rule binds', () => {
    expect(pairs.filter(({ solved }) => solved >= 2).length).toBeGreaterThan(CASES / 4);
    const binds = (change: Partial<Case>) =>
      pairs.filter(({ own, solved }) => count({ ...own, ...change }) > solved).length;
    expect(binds({ distinct: 1 })).toBeGreaterThan(10);
    const free = pairs.filter(({ own, solved }) => {
      const prints = own.prints.map((print) => ({ ...print, most: 99 }));
      return count({ ...own, prints }) > solved;
    });
    expect(free.length).toBeGreaterThan(10);
  });
});
