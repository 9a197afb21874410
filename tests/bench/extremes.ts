import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';

const many = <T>(count: number, make: (at: number) => T): T[] =>
  Array.from({ length: count }, (_, at) => make(at));

const prints = (count: number) =>
  many(count, (at) => ({ id: `Print ${at}`, width: 100 + (at % 4) }));
const cuts = many(SIZE_LIMITS.cuts, (at) => 10 + at / 2);
const sandwich = ['top', 'middle', 'middle', 'backing'];
const backing = { role: 'backing' };
const grid = { target: { columns: 50, rows: 50 }, block: { cut: 3, seam: 0.5, snipDepth: 0.25 } };
const counted = (counts: readonly number[]) =>
  counts.map((count, at) => ({ id: `Print ${at}`, count }));
/** Flat pieces of many sizes and a roll, with a price or compared by their area. */
const offers = (count: number, isPriced: boolean) =>
  many(count, (at) => ({
    ...(at === 0
      ? { kind: 'roll', id: 'Bolt' }
      : {
          kind: 'pieces',
          id: `Offer ${at}`,
          width: 9 + ((at * 13) % 33),
          length: 9 + ((at * 7) % 29),
          count: 1 + (at % 5),
        }),
    ...(isPriced && { price: 300 + 170 * at }),
  }));
const weighed = many(SIZE_LIMITS.prints, (at) => ({ id: `Print ${at}`, share: 10 + at }));
const swatches = many(SIZE_LIMITS.swatches, (at) => ({
  fabric: ['quilting-cotton', 'flannel', 'sandwich'][at % 3],
  direction: at % 2 === 0 ? 'length' : 'width',
  before: 10,
  after: 9.5 + (at % 7) * 0.05,
  washes: 1 + (at % 10),
}));
const side = 40;
const cells = side * side;
/** Nine prints of a layout, each of about a part fewer blocks than the one before. */
const UNEVEN = [437, 270, 192, 149, 122, 103, 89, 79, 159];

/** Inputs at the limits of each endpoint, by hand: much of everything. */
export const EXTREMES: Readonly<Record<string, readonly object[]>> = {
  '/v1/plan': [
    {
      unit: 'cm',
      target: { bed: { width: 160, length: 200, drop: 35 } },
      cuts,
      layers: sandwich.map((role) => ({ role, prints: prints(SIZE_LIMITS.prints) })),
      explain: true,
    },
    ...[2, 4, 7, SIZE_LIMITS.prints].map((count) => ({
      ...grid,
      layers: [{ role: 'top', prints: count }, backing],
      explain: true,
    })),
    ...[false, true].map((isPriced) => ({
      ...grid,
      layers: sandwich.map((role) => ({
        role,
        prints: weighed,
        offers: offers(SIZE_LIMITS.offers, isPriced),
      })),
      explain: true,
    })),
    {
      ...grid,
      layers: sandwich.map((role) => ({
        role,
        prints: weighed,
        offers: offers(SIZE_LIMITS.offers, true),
      })),
      stitch: { length: '0.5 mm', bobbin: '1 m' },
      pupils: NUMBER_LIMITS.pupils.most,
      explain: true,
    },
    { target: { size: 'throw' }, swatches, explain: true },
    { ...grid, layers: [{ role: 'top', prints: counted([1250, ...many(25, () => 50)]) }, backing] },
    { ...grid, layers: [{ role: 'top', prints: counted([1250, 625, 625]) }, backing] },
    { ...grid, layers: [{ role: 'top', prints: counted([900, 800, 800]) }, backing] },
  ],
  '/v1/yardage': [
    { fabrics: 1, sold: [] },
    { fabrics: SIZE_LIMITS.fabrics, sold: [] },
    { fabrics: SIZE_LIMITS.fabrics, sold: offers(SIZE_LIMITS.offers, true) },
    { fabrics: SIZE_LIMITS.fabrics, sold: offers(SIZE_LIMITS.offers + 1, false).slice(1) },
  ].map(({ fabrics, sold }) => ({
    fabrics: many(fabrics, (fabric) => ({
      id: `Roll ${fabric}`,
      ...(sold.length > 0 && { offers: sold }),
      width: 44 + fabric,
      pieces: many(SIZE_LIMITS.pieceKinds, (at) => ({
        id: `Piece ${at}`,
        width: 3 + ((at * 37 + fabric) % 23) * 0.7,
        length: 3 + ((at * 53 + fabric) % 29) * 0.6,
        count: 5 + ((at * 7) % 40),
      })),
    })),
  })),
  '/v1/wash-shrinkage': [
    {
      swatches: many(SIZE_LIMITS.swatches, (at) => ({
        fabric: `Cloth ${at % 15}`,
        direction: at % 2 === 0 ? 'length' : 'width',
        before: 10,
        after: 9.5 + (at % 7) * 0.05,
        washes: 1 + (at % 10),
      })),
      layers: sandwich.map((role) => ({ role })),
      sewn: { width: 40, height: 50 },
      wanted: { width: 40, height: 50 },
      washes: many(SIZE_LIMITS.washCounts, (at) => 1 + at * 4),
    },
  ],
  '/v1/layout': ['scattered', 'checkerboard', 'diagonal', 'rings'].flatMap((pattern) => [
    ...[3, 5, SIZE_LIMITS.prints].map((count) => ({
      columns: side,
      rows: side,
      prints: many(count, (at) => ({ id: `Print ${at}`, value: (at * 37) % 100 })),
      pattern,
      touch: 'corners',
    })),
    { columns: side, rows: side, prints: counted([cells / 2, cells / 4, cells / 4]), pattern },
    ...(['sides', 'corners'] as const).map((touch) => ({
      columns: side,
      rows: side,
      prints: counted(UNEVEN),
      pattern,
      touch,
    })),
  ]),
  '/v1/stash': many(3, (kind) => ({
    pieces: many(SIZE_LIMITS.prints + 5, (at) => ({
      id: `Piece ${at}`,
      role: at < SIZE_LIMITS.prints ? 'top' : 'backing',
      width: 20 + (at % (20 + kind)),
      length: 30 + (at % 37),
      count: 1 + ((at * (kind + 1)) % 9),
    })),
    cuts: many(SIZE_LIMITS.cuts, (at) => 4 + at / 8),
    touch: kind === 0 ? 'corners' : 'sides',
  })),
  '/v1/kits': [
    {
      plan: { target: { columns: 10, rows: 10 }, block: { cut: 5 } },
      bolts: many(SIZE_LIMITS.bolts, (at) => ({
        id: `Bolt ${at}`,
        role: at < 50 ? 'top' : 'backing',
        width: 44,
        length: 3000 + at * 10,
      })),
      perKit: { distinctPrints: 20, mostOfOne: 10 },
    },
  ],
};
