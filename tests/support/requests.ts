import fc from 'fast-check';
import type {
  ClothOffer,
  Layer,
  PlanLayer,
  PlanRequest,
  WashRequest,
  YardageRequest,
} from '#core/contract.ts';
import { FABRICS } from '#core/tables/fabrics.ts';

/** A length with at most three decimals. */
const length = (least: number, most: number) =>
  fc
    .integer({ min: Math.ceil(least * 1000), max: Math.floor(most * 1000) })
    .map((mils) => mils / 1000);

/** The same length in another way of writing, in a request in inches. */
export function spellLength(inches: number, way: number): number | string {
  const text = String(inches);
  return [inches, text, `${text} in`, `${text}"`, ` ${text} inches `][way % 5] ?? inches;
}

const name = fc.oneof(
  fc.constantFrom('Blue sprig', '12', 'true', 'a&b=c', 'Ö', '青い花', '100%', "O'Hara", '<b>'),
  fc.stringMatching(/^[ -~]{1,12}$/),
);

const money = fc.integer({ min: 0, max: 5000 });

/** A roll, flat pieces of at least a length a side, or both; all of them with a price. */
const clothOffers = (least: number): fc.Arbitrary<readonly ClothOffer[]> =>
  fc.uniqueArray(
    fc.oneof(
      fc.record(
        {
          kind: fc.constant('roll' as const),
          id: name,
          step: length(1, 36),
          least: length(1, 72),
          price: money,
        },
        { requiredKeys: ['kind', 'id', 'price'], noNullPrototype: true },
      ),
      fc.record(
        {
          kind: fc.constant('pieces' as const),
          id: name,
          width: length(least, 30),
          length: length(least, 30),
          count: fc.integer({ min: 1, max: 40 }),
          most: fc.integer({ min: 1, max: 5 }),
          price: money,
        },
        {
          requiredKeys: ['kind', 'id', 'width', 'length', 'count', 'price'],
          noNullPrototype: true,
        },
      ),
    ),
    { minLength: 1, maxLength: 3, selector: ({ id }) => id },
  );

const layer = (role: Layer['role']): fc.Arbitrary<PlanLayer> =>
  fc.record(
    {
      role: fc.constant(role),
      fabric: fc.constantFrom(...FABRICS.map((fabric) => fabric.name)),
      prints: fc.oneof(
        fc.integer({ min: 1, max: 8 }),
        fc
          .uniqueArray(name, { minLength: 1, maxLength: 4 })
          .map((names) => names.map((id) => ({ id }))),
      ),
      width: length(30, 110),
      selvage: length(0, 1),
      shrink: fc.record({ length: length(0, 8), width: length(0, 8) }, { noNullPrototype: true }),
      prewashed: fc.boolean(),
      gsm: fc.integer({ min: 60, max: 500 }),
      offers: clothOffers(14),
    },
    { requiredKeys: ['role'], noNullPrototype: true },
  );

/** Wishes in inches that are nearly all possible. */
export const planRequests: fc.Arbitrary<PlanRequest> = fc.record(
  {
    target: fc.oneof(
      fc.record({ width: length(20, 100), height: length(20, 100) }, { noNullPrototype: true }),
      fc.constantFrom(
        { size: 'throw' as const },
        { size: 'queen' as const, region: 'us' as const },
      ),
      fc.record(
        { columns: fc.integer({ min: 1, max: 14 }), rows: fc.integer({ min: 1, max: 14 }) },
        { noNullPrototype: true },
      ),
    ),
    block: fc.record(
      { cut: length(5, 12), seam: length(0.75, 1.25), snipPitch: length(0.125, 0.5) },
      { requiredKeys: [], noNullPrototype: true },
    ),
    layers: fc.tuple(layer('top'), layer('backing')),
    grain: fc.constantFrom('alternating' as const, 'aligned' as const),
    washes: fc.integer({ min: 1, max: 50 }),
    spare: fc.integer({ min: 0, max: 30 }),
    infant: fc.boolean(),
    pupils: fc.integer({ min: 1, max: 60 }),
    explain: fc.boolean(),
  },
  { requiredKeys: ['target'], noNullPrototype: true },
);

const rollPieces = fc.uniqueArray(
  fc.record(
    {
      id: name,
      width: length(2, 28),
      length: length(2, 28),
      count: fc.integer({ min: 1, max: 60 }),
      directional: fc.boolean(),
    },
    { requiredKeys: ['id', 'width', 'length', 'count'], noNullPrototype: true },
  ),
  { minLength: 1, maxLength: 4, selector: ({ id }) => id },
);

/** Up to four sizes of piece of one cloth, in inches. */
export const yardageRequests: fc.Arbitrary<YardageRequest> = fc
  .record(
    {
      id: name,
      width: length(30, 110),
      lengthLeft: length(10, 400),
      offers: clothOffers(5),
      pieces: rollPieces,
    },
    { requiredKeys: ['id', 'width', 'pieces'], noNullPrototype: true },
  )
  .map((fabric) => ({ fabrics: [fabric] }));

/** Swatches of one cloth and a size, in inches. */
export const washRequests: fc.Arbitrary<WashRequest> = fc.record(
  {
    swatches: fc.array(
      fc.record(
        {
          fabric: name,
          direction: fc.constantFrom('length' as const, 'width' as const),
          before: length(8, 12),
          after: length(7, 12),
          washes: fc.integer({ min: 1, max: 10 }),
        },
        { requiredKeys: ['direction', 'before', 'after'], noNullPrototype: true },
      ),
      { minLength: 1, maxLength: 6 },
    ),
    sewn: fc.record({ width: length(20, 100), height: length(20, 100) }, { noNullPrototype: true }),
    wanted: fc.record(
      { width: length(20, 100), height: length(20, 100) },
      { noNullPrototype: true },
    ),
    confidence: fc.constantFrom(90 as const, 95 as const, 99 as const),
  },
  { requiredKeys: [], noNullPrototype: true },
);

/** Any JSON as a flat query, one pair a leaf. */
export function flattenInput(value: unknown, path: readonly string[] = []): readonly string[] {
  if (typeof value !== 'object' || value === null) {
    return [`${path.join('.')}=${encodeURIComponent(String(value).toWellFormed())}`];
  }
  return Object.entries(value).flatMap(([key, part]) => flattenInput(part, [...path, key]));
}
