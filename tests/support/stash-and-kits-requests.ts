import fc from 'fast-check';
import type { KitBolt, KitsRequest, Role, StashPiece, StashRequest } from '#core/contract.ts';
import { FABRICS } from '#core/tables/fabrics.ts';

/** A length in inches with at most two decimals. */
const length = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((hundredths) => hundredths / 100);

const name = fc.constantFrom(
  'Blue sprig',
  '12',
  'true',
  'a&b=c',
  '青い花',
  '100%',
  "O'Hara",
  '<b>',
);
const role = fc.constantFrom<Role>('top', 'top', 'top', 'backing');
const piece = fc.record(
  {
    id: fc.stringMatching(/^[a-z]{6}$/),
    role,
    print: name,
    width: length(5, 60),
    length: length(5, 90),
    count: fc.integer({ min: 1, max: 9 }),
    directional: fc.boolean(),
    selvage: length(0, 1),
  },
  { requiredKeys: ['id', 'role', 'width', 'length'], noNullPrototype: true },
);

const layers = fc.tuple(
  fc.record(
    { role: fc.constant<Role>('top'), fabric: fc.constantFrom(...FABRICS.map((one) => one.name)) },
    { requiredKeys: ['role'], noNullPrototype: true },
  ),
  fc.record(
    { role: fc.constant<Role>('backing'), prewashed: fc.boolean() },
    { requiredKeys: ['role'], noNullPrototype: true },
  ),
);

/** Stashes in inches that are nearly all possible. */
export const stashRequests: fc.Arbitrary<StashRequest> = fc.record(
  {
    pieces: fc.array<StashPiece>(piece, { minLength: 1, maxLength: 7 }),
    block: fc.record(
      { cut: length(5, 12), seam: length(0, 1).map((own) => own + 0.5) },
      { requiredKeys: [], noNullPrototype: true },
    ),
    cuts: fc.array(length(6, 12), { minLength: 1, maxLength: 4 }),
    layers,
    shape: fc.oneof(
      fc.record({ ratio: fc.integer({ min: 20, max: 500 }).map((own) => own / 100) }),
      fc.constantFrom(
        { target: { size: 'throw' as const } },
        { target: { width: 40, height: 50, at: 'sewn' as const } },
        { target: { columns: 5, rows: 6 } },
      ),
    ),
    touch: fc.constantFrom('sides' as const, 'corners' as const),
    grain: fc.constantFrom('alternating' as const, 'aligned' as const),
    washes: fc.integer({ min: 1, max: 50 }),
    squaring: length(0, 2),
    usable: length(1, 6),
  },
  { requiredKeys: ['pieces'], noNullPrototype: true },
);

const bolt = fc.record(
  {
    id: fc.stringMatching(/^[a-z]{6}$/),
    role,
    print: name,
    width: length(20, 110),
    length: length(5, 900),
    selvage: length(0, 1),
    squaring: length(0, 2),
    cost: fc.integer({ min: 0, max: 5000 }),
  },
  { requiredKeys: ['id', 'role', 'width', 'length', 'cost'], noNullPrototype: true },
);

const money = fc.integer({ min: 0, max: 9000 });

/** Kits in inches that are nearly all possible. */
export const kitsRequests: fc.Arbitrary<KitsRequest> = fc.record(
  {
    plan: fc.record(
      {
        target: fc.constantFrom({ size: 'throw' as const }, { columns: 4, rows: 5 }),
        block: fc.record({ cut: length(6, 12) }),
        layers,
        washes: fc.integer({ min: 1, max: 9 }),
      },
      { requiredKeys: ['target'], noNullPrototype: true },
    ),
    kits: fc.integer({ min: 1, max: 200 }),
    bolts: fc.array<KitBolt>(bolt, { minLength: 1, maxLength: 7 }),
    perKit: fc.record(
      {
        distinctPrints: fc.integer({ min: 1, max: 6 }),
        mostOfOne: fc.integer({ min: 1, max: 30 }),
        spare: fc.integer({ min: 0, max: 5 }),
      },
      { requiredKeys: [], noNullPrototype: true },
    ),
    costs: fc.oneof(
      fc.record({ packaging: money, labour: money, margin: fc.integer({ min: 0, max: 99 }) }),
      fc.record({ overhead: money, markup: fc.integer({ min: 0, max: 300 }) }),
      fc.record({ price: money }),
    ),
    currency: fc.constantFrom('USD', 'EUR', 'JPY', 'KWD'),
    fibres: fc.record({
      top: fc.integer({ min: 1, max: 99 }).map((percent) => [
        { fibre: 'cotton', percent },
        { fibre: '12', percent: 100 - percent },
      ]),
    }),
  },
  { requiredKeys: ['plan', 'bolts'], noNullPrototype: true },
);
