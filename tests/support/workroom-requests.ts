import fc from 'fast-check';
import type { KitsRequest, LayoutRequest, StashRequest, YardageRequest } from '#core/contract.ts';

const plain = { noNullPrototype: true } as const;

/** A length in inches, to the eighth. */
const inches = (least: number, most: number) =>
  fc.integer({ min: least * 8, max: most * 8 }).map((eighths) => eighths / 8);

/** Names of prints, at least two. */
const names = (most: number) =>
  fc
    .integer({ min: 2, max: most })
    .map((count) => Array.from({ length: count }, (_, at) => `Print ${at + 1}`));

/** Several sizes of piece on a roll, in inches. */
export const mixedYardageRequests: fc.Arbitrary<YardageRequest> = fc
  .record(
    {
      width: inches(36, 60),
      prewash: fc.record(
        { length: fc.integer({ min: 0, max: 6 }), width: fc.integer({ min: 0, max: 4 }) },
        plain,
      ),
      lengthLeft: inches(20, 200),
      sizes: fc.uniqueArray(fc.tuple(inches(3, 14), inches(3, 14)), { minLength: 1, maxLength: 3 }),
      count: fc.integer({ min: 1, max: 40 }),
      directional: fc.boolean(),
    },
    { requiredKeys: ['width', 'sizes', 'count', 'directional'], ...plain },
  )
  .map(({ sizes, count, directional, ...roll }) => ({
    fabrics: [
      {
        id: 'Roll',
        ...roll,
        pieces: sizes.map(([width, length], at) => ({
          id: `Piece ${at + 1}`,
          width,
          length,
          count: count + 3 * at,
          directional,
        })),
      },
    ],
  }));

/** Pieces on hand, in inches. */
export const stashRequests: fc.Arbitrary<StashRequest> = fc.record(
  {
    pieces: fc
      .tuple(
        fc.array(fc.tuple(inches(9, 44), inches(9, 60), fc.integer({ min: 1, max: 5 })), {
          minLength: 1,
          maxLength: 6,
        }),
        inches(30, 108),
      )
      .map(([tops, backing]) => [
        ...tops.map(([width, length, count], at) => ({
          id: `Print ${at + 1}`,
          role: 'top' as const,
          width,
          length,
          count,
        })),
        { id: 'Flannel', role: 'backing' as const, width: 42, length: backing },
      ]),
    cuts: fc.uniqueArray(inches(5, 9), { minLength: 1, maxLength: 4 }),
    shape: fc.record(
      { ratio: fc.integer({ min: 5, max: 15 }).map((tenths) => tenths / 10) },
      plain,
    ),
    touch: fc.constantFrom('sides' as const, 'corners' as const),
    washes: fc.integer({ min: 1, max: 20 }),
  },
  { requiredKeys: ['pieces'], ...plain },
);

/** Bolts for kits of one plan, in inches. */
export const kitsRequests: fc.Arbitrary<KitsRequest> = fc
  .record(
    {
      names: names(6),
      length: inches(40, 300),
      flannel: inches(100, 900),
      columns: fc.integer({ min: 2, max: 8 }),
      rows: fc.integer({ min: 2, max: 8 }),
      cut: inches(5, 9),
      kits: fc.integer({ min: 1, max: 30 }),
      costs: fc.record(
        { packaging: fc.integer({ min: 0, max: 500 }), margin: fc.integer({ min: 5, max: 70 }) },
        plain,
      ),
    },
    { requiredKeys: ['names', 'length', 'flannel', 'columns', 'rows', 'cut'], ...plain },
  )
  .map(({ names, length, flannel, columns, rows, cut, ...rest }) => ({
    plan: { target: { columns, rows }, block: { cut } },
    bolts: [
      ...names.map((id, at) => ({
        id,
        role: 'top' as const,
        width: 44,
        length: length + at,
        cost: 900 + at,
      })),
      { id: 'Flannel', role: 'backing' as const, width: 42, length: flannel, cost: 700 },
    ],
    ...rest,
  }));

/** Grids to fill. */
export const layoutRequests: fc.Arbitrary<LayoutRequest> = fc.record(
  {
    columns: fc.integer({ min: 1, max: 14 }),
    rows: fc.integer({ min: 1, max: 14 }),
    prints: names(8).map((ids) => ids.map((id, at) => ({ id, value: (at * 37) % 100 }))),
    pattern: fc.constantFrom(...(['scattered', 'checkerboard', 'diagonal', 'rings'] as const)),
    touch: fc.constantFrom('sides' as const, 'corners' as const),
    seed: fc.integer({ min: 0, max: 999 }),
  },
  { requiredKeys: ['columns', 'rows', 'prints'], ...plain },
);
