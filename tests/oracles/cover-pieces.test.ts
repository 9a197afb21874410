/**
 * The cheapest purchase against HiGHS, a mixed-integer solver: every full strip of the roll and every
 * full sheet written down without the core, bought in whole steps and packs.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { coverPieces } from '#core/cloth/offers/cover-pieces.ts';
import type { CoverOrder, RollOffer, SheetOffer } from '#core/cloth/offers/offer.ts';
import { deepFreeze } from '../support/deep-freeze.ts';
import { listStrips } from '../support/pattern-model.ts';
import { type Highs, solveModel } from '../support/solve-model.ts';

const CASES = 150;
const SECONDS = 5;
const HALF = 12.7;
const USABLE = 82 * HALF;

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const side = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((halves) => halves * HALF);
const kind = fc.record({
  across: side(8, 32),
  along: side(8, 32),
  count: fc.integer({ min: 1, max: 30 }),
  canTurn: fc.boolean(),
});
const roll: fc.Arbitrary<RollOffer> = fc.record({
  room: fc.constant(9 * HALF),
  squaring: fc.constant(2 * HALF),
  least: fc.integer({ min: 1, max: 3 }),
  cost: fc.integer({ min: 100, max: 180 }),
});
const quarter = fc.record({
  width: fc.constant(42 * HALF),
  length: fc.constant(36 * HALF),
  count: fc.constant(1),
  cost: fc.integer({ min: 250, max: 500 }),
});
const squares = fc.record({
  width: fc.constant(20 * HALF),
  length: fc.constant(20 * HALF),
  count: fc.integer({ min: 10, max: 42 }),
  cost: fc.integer({ min: 800, max: 3300 }),
});
const remnant = fc.record({
  width: fc.constant(60 * HALF),
  length: fc.constant(30 * HALF),
  count: fc.constant(1),
  most: fc.integer({ min: 1, max: 2 }),
  cost: fc.integer({ min: 50, max: 300 }),
});
const orders: fc.Arbitrary<CoverOrder> = fc
  .record({
    kinds: fc.array(kind, { minLength: 1, maxLength: 4 }),
    usable: fc.constant(USABLE),
    rolls: fc.array(roll, { maxLength: 2 }),
    sheets: fc
      .tuple(fc.option(quarter), fc.option(squares), fc.option(remnant))
      .map((all) => all.filter((one) => one !== null)),
  })
  .filter(({ rolls, sheets }) => rolls.length + sheets.length > 0);

/** Every full sheet: strips one below the other, tallest first; nothing where there are too many. */
function listSheets(
  { kinds }: CoverOrder,
  sheet: SheetOffer,
): readonly (readonly number[])[] | undefined {
  const strips = listStrips({ kinds, usable: sheet.width }, sheet.length);
  const found = new Map<string, readonly number[]>();
  const visit = (from: number, room: number, counts: readonly number[]): void => {
    let isFull = true;
    for (let at = from; at < strips.length && found.size <= 600; at += 1) {
      const strip = strips[at];
      if (strip === undefined || strip.height > room + 1e-5) continue;
      isFull = false;
      const more = counts.map((count, own) =>
        Math.min(kinds[own]?.count ?? 0, count + (strip.counts[own] ?? 0)),
      );
      visit(at, room - strip.height, more);
    }
    if (isFull) found.set(counts.join(), counts);
  };
  visit(
    0,
    sheet.length,
    kinds.map(() => 0),
  );
  return found.size <= 600 ? [...found.values()] : undefined;
}

/** The least cost with one roll or none, by HiGHS; nothing where it ran out of time. */
function solveWith(
  order: CoverOrder,
  offer: RollOffer | undefined,
  sheets: readonly (readonly (readonly number[])[])[],
) {
  const strips = offer === undefined ? [] : listStrips(order);
  const owners = sheets.flatMap((own, at) => own.map((counts) => ({ at, counts })));
  const steps = offer === undefined ? [] : [offer];
  const pad = (given: {
    steps?: number;
    packs?: readonly number[];
    sheets?: readonly number[];
    strips?: readonly number[];
  }) => [
    ...steps.map(() => given.steps ?? 0),
    ...order.sheets.map((_, at) => given.packs?.[at] ?? 0),
    ...owners.map((_, at) => given.sheets?.[at] ?? 0),
    ...strips.map((_, at) => given.strips?.[at] ?? 0),
  ];
  const only = (own: number, value: number) =>
    order.sheets.map((_, at) => (at === own ? value : 0));
  return solveModel(highs, {
    seconds: SECONDS,
    costs: pad({ steps: offer?.cost ?? 0, packs: order.sheets.map(({ cost }) => cost) }),
    rows: [
      ...order.kinds.map(({ count }, own) => ({
        least: count,
        terms: pad({
          sheets: owners.map(({ counts }) => counts[own] ?? 0),
          strips: strips.map(({ counts }) => counts[own] ?? 0),
        }),
      })),
      ...order.sheets.flatMap((sheet, own) => [
        {
          least: 0,
          terms: pad({
            packs: only(own, sheet.count),
            sheets: owners.map(({ at }) => (at === own ? -1 : 0)),
          }),
        },
        ...(sheet.most === undefined
          ? []
          : [{ least: -sheet.most, terms: pad({ packs: only(own, -1) }) }]),
      ]),
      ...steps.flatMap(({ room, squaring, least }) => [
        {
          least: Math.round(squaring / HALF),
          terms: pad({
            steps: Math.round(room / HALF),
            strips: strips.map(({ height }) => -Math.round(height / HALF)),
          }),
        },
        { least, terms: pad({ steps: 1 }) },
      ]),
    ],
  });
}

function solveAll(order: CoverOrder): number | undefined {
  const sheets = order.sheets.map((sheet) => listSheets(order, sheet));
  if (sheets.some((one) => one === undefined)) return undefined;
  const known = sheets.map((one) => one ?? []);
  const costs = [undefined, ...order.rolls].map((offer) => solveWith(order, offer, known));
  return costs.some((cost) => cost === undefined)
    ? undefined
    : Math.min(...costs.map((cost) => cost ?? Number.NaN));
}

describe('coverPieces', () => {
  test('coverPieces agrees with HiGHS on more than 120 purchases, impossible ones included', () => {
    let agreed = 0;
    let proven = 0;
    for (const order of fc.sample(orders.map(deepFreeze), {
      numRuns: CASES,
      seed: inject('seed'),
    })) {
      const least = solveAll(order);
      if (least === undefined) continue;
      const plan = coverPieces(order);
      const isWhole = order.kinds.every(({ count }, own) => plan.placed[own] === count);
      expect(isWhole).toBe(Number.isFinite(least));
      agreed += 1;
      if (!isWhole) continue;
      if (plan.optimal) {
        expect(plan.cost).toBeCloseTo(least, 3);
        proven += 1;
      } else {
        expect(plan.cost).toBeGreaterThan(least - 1e-3);
        expect(plan.bound).toBeLessThan(least + 1e-3);
      }
    }
    expect(agreed).toBeGreaterThan(120);
    expect(proven).toBeGreaterThan(85);
  }, 120_000);
});
