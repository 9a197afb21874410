import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Target, Unit } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { type ReadWish, readWish } from '#core/wish/read-wish.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

type Row = readonly [
  words: string,
  unit: Unit,
  target: Target,
  beside?: Partial<Pick<ReadWish, 'infant' | 'block'>>,
];

const INCHES: readonly Row[] = [
  ['a throw for the reading room, about 40 by 50 inches', 'in', { width: 40, height: 50 }],
  ['50x60', 'in', { width: 50, height: 60 }],
  ['50 × 60', 'in', { width: 50, height: 60 }],
  ['50-by-60', 'in', { width: 50, height: 60 }],
  ['50" x 60"', 'in', { width: 50, height: 60 }],
  ['40”×50”', 'in', { width: 40, height: 50 }],
  ['120 by 150', 'in', { width: 120, height: 150 }],
  ['40 by 50 inches, 8 inch blocks', 'in', { width: 40, height: 50 }, { block: { cut: 8 } }],
  ['8 by 8 inch blocks, 40 x 50 inches', 'in', { width: 40, height: 50 }, { block: { cut: 8 } }],
  [
    'a lap quilt, 36 x 48, from 8.5 in squares',
    'in',
    { width: 36, height: 48 },
    { block: { cut: 8.5 } },
  ],
  ['60 in. by 80 in.', 'in', { width: 60, height: 80 }],
  ['5 ft by 6 ft', 'in', { width: '5 ft', height: '6 ft' }],
  [`5'6" by 6'`, 'in', { width: '5 ft 6 in', height: '6 ft' }],
  ['5 feet 6 inches by 6 feet', 'in', { width: '5 ft 6 in', height: '6 ft' }],
  ['3 yards by 2 yards', 'in', { width: '3 yd', height: '2 yd' }],
  ['40 1/2 by 50 1/4', 'in', { width: '40 1/2', height: '50 1/4' }],
  ['60 inches wide and 80 inches long', 'in', { width: 60, height: 80 }],
  ['80" long by 60" wide', 'in', { width: 60, height: 80 }],
  ['48w x 60h', 'in', { width: 48, height: 60 }],
  ['a 50 inch square', 'in', { width: 50, height: 50 }],
  ['40 by 50 before washing', 'in', { width: 40, height: 50, at: 'sewn' }],
  ['2 by 3 m', 'cm', { width: '2 m', height: '3 m' }],
  ['1,20 m x 1,50 m', 'cm', { width: '1,20 m', height: '1,50 m' }],
  ['150cmx200cm', 'cm', { width: 150, height: 200 }],
  ['1m20 by 1m50', 'cm', { width: '1 m 20 cm', height: '1 m 50 cm' }],
  ['1200 x 1500 mm', 'cm', { width: '1200 mm', height: '1500 mm' }],
  ['1.5 metres by 2 metres', 'cm', { width: '1.5 m', height: '2 m' }],
  ['40 inches by 50 cm', 'cm', { width: '40 in', height: 50 }],
  ['6 by 8 blocks', 'in', { columns: 6, rows: 8 }],
  ['6 x 8 squares', 'in', { columns: 6, rows: 8 }],
  ['8 rows of 6 blocks', 'in', { columns: 6, rows: 8 }],
  ['6 columns and 8 rows', 'in', { columns: 6, rows: 8 }],
  ['queen 10 by 12 blocks', 'in', { columns: 10, rows: 12 }],
  ['queen', 'in', { size: 'queen' }],
  ['lap quilt for gran', 'in', { size: 'lap' }],
  ['baby quilt', 'in', { size: 'cot' }, { infant: true }],
  ['something for a cot, 100 x 120 cm', 'cm', { width: 100, height: 120 }, { infant: true }],
  ['crib quilt 40 by 60', 'in', { width: 40, height: 60 }, { infant: true }],
  ['baby blanket, 100 x 120 cm', 'cm', { width: 100, height: 120 }, { infant: true }],
  ['a quilt for my BABY 40 by 50', 'in', { width: 40, height: 50 }, { infant: true }],
  ['50 by 60 for the nursery', 'in', { width: 50, height: 60 }, { infant: true }],
  ["a newborn's throw", 'in', { size: 'throw' }, { infant: true }],
  ['a cottage throw in apricot, 40 by 50', 'in', { width: 40, height: 50 }],
  ['6 x 7 grid', 'in', { columns: 6, rows: 7 }],
  ['a grid of 6 by 7, half inch seams', 'in', { columns: 6, rows: 7 }, { block: { seam: '1/2' } }],
  [
    '6 x 7 grid of 10 1/2 inch squares',
    'in',
    { columns: 6, rows: 7 },
    { block: { cut: '10 1/2' } },
  ],
  ['6 by 8 blocks of 10 inches', 'in', { columns: 6, rows: 8 }, { block: { cut: 10 } }],
  ['8 rows of 6, blue', 'in', { columns: 6, rows: 8 }],
  [
    '50 x 60 from 10" squares with 1/2" seams',
    'in',
    { width: 50, height: 60 },
    { block: { cut: 10, seam: '1/2' } },
  ],
  ['throw, 21 cm blocks', 'in', { size: 'throw' }, { block: { cut: '21 cm' } }],
  ['40 by 50, 8 x 10 inch blocks', 'in', { width: 40, height: 50 }],
  ['queen, eight inch blocks', 'in', { size: 'queen' }],
  [
    'mattress 90 by 200 cm, hanging down 30 cm',
    'cm',
    { bed: { width: 90, length: 200, drop: 30 } },
  ],
  ['queen bed with 15 inch drop', 'in', { bed: { width: 60, length: 80, drop: 15 } }],
  ['60 by 80, overhang 12', 'in', { bed: { width: 60, length: 80, drop: 12 } }],
  ['a wall hanging, 40 by 50', 'in', { width: 40, height: 50 }],
  ['90 x 108 quilt for a queen mattress', 'in', { width: 90, height: 108 }],
  ['60 wide and 80 long, sewn', 'in', { width: 60, height: 80, at: 'sewn' }],
  ['a hand sewn quilt, 40 by 50, sewn with care', 'in', { width: 40, height: 50 }],
  ['quilt - 40 by 50', 'in', { width: 40, height: 50 }],
  ['a double-sided throw', 'in', { size: 'throw' }],
  ['50 by 60, queen', 'in', { width: 50, height: 60 }],
  ['a king size bed in the UK', 'in', { size: 'king', region: 'uk' }],
  ['tell us: a throw', 'in', { size: 'throw' }],
  ['super king', 'in', { size: 'super-king', region: 'uk' }],
  ['cal king', 'in', { size: 'california-king' }],
  ['twin XL', 'in', { bed: { width: '38 in', length: '80 in' } }],
];

const CENTIMETRES: readonly Row[] = [
  ['120 by 150', 'cm', { width: 120, height: 150 }],
  ['120 by 150 in blue', 'cm', { width: 120, height: 150 }],
  ['40 by 50 in', 'in', { width: 40, height: 50 }],
  ['a 40 x 50 in quilt', 'in', { width: 40, height: 50 }],
  ['queen', 'cm', { size: 'queen' }],
  ['queen with 10 inch squares', 'cm', { size: 'queen' }, { block: { cut: '10 in' } }],
  ['120 x 150, 21,5 cm squares', 'cm', { width: 120, height: 150 }, { block: { cut: 21.5 } }],
  ['120 by 150 in squares', 'cm', { width: 120, height: 150 }],
  ['california king', 'cm', { size: 'california-king', region: 'us' }],
];

const UNCLEAR = [
  '',
  'hello',
  'a big one',
  'between 40 and 50 inches',
  '3 to 4 feet',
  '8 x 8 inch blocks',
  '8 inch blocks',
  '6 inch square blocks',
  '50 square inches',
  '50 x 60 x 2',
  '50 x',
  'throw or lap',
  '150 by 3 blocks',
  '1206 by 8 blocks',
  'lapdog',
  '-40 by 50',
  '40 by -50, throw',
  '−40 x 50',
  '30-40 by 50',
  '150 by 3 grid',
  'grid of 150 by 3',
  '8 rows of 6 inch blocks',
  'throw with 15 inch drop',
  'six by eight',
];

type Whole = readonly [words: string, target: Target, beside?: Partial<ReadWish>];

/** Wishes with all that they must mean, and every word of them that is passed over. */
const WHOLE: readonly Whole[] = [
  [
    'twin, 3 layers, 6 prints, washed twice, 8 inch squares',
    { size: 'twin' },
    { block: { cut: 8 }, prints: 6, middle: true, washes: 2 },
  ],
  ['queen, without any batting', { size: 'queen' }, { middle: false }],
  ['twin, skip the batting', { size: 'twin' }, { passed: ['skip', 'batting'] }],
  ['throw for the middle bedroom', { size: 'throw' }, { passed: ['middle bedroom'] }],
  ['queen, 8 inch blocks finished', { size: 'queen' }, { block: { cut: 10, seam: 1 } }],
  [
    'throw, 6 inch blocks, finished with a scalloped edge',
    { size: 'throw' },
    { block: { cut: 6 }, passed: ['scalloped edge'] },
  ],
  [
    '9 inch blocks, finish with binding, throw',
    { size: 'throw' },
    { block: { cut: 9 }, passed: ['finish', 'binding'] },
  ],
  ['Babydecke 36 x 48', { width: 36, height: 48 }, { infant: true }],
  ['couverture bébé 36 x 48', { width: 36, height: 48 }, { infant: true }],
  ['colcha de cuna 36 x 48', { width: 36, height: 48 }, { infant: true }],
  ['throw', { size: 'throw' }],
  ['a throw for my bed, please', { size: 'throw' }],
  ['throw, 8 inch blocks', { size: 'throw' }, { block: { cut: 8 } }],
  ['throw, 8 inch cut squares', { size: 'throw' }, { block: { cut: 8 } }],
  ['throw from 5 inch charm squares', { size: 'throw' }, { block: { cut: 5 } }],
  ['throw, 8 inch finished squares', { size: 'throw' }, { block: { cut: 10, seam: 1 } }],
  ['throw, blocks finished at 8 inches', { size: 'throw' }, { block: { cut: 10, seam: 1 } }],
  [
    'throw, 10 inch finished blocks, half inch seams',
    { size: 'throw' },
    { block: { cut: 11, seam: '1/2' } },
  ],
  ['queen, six prints', { size: 'queen' }, { prints: 6 }],
  ['queen, 12 fabrics', { size: 'queen' }, { prints: 12 }],
  ['queen, 12 different fabrics', { size: 'queen' }, { prints: 12 }],
  ['queen, 40 prints', { size: 'queen' }, { passed: ['40 prints'] }],
  ['queen, two layers', { size: 'queen' }, { middle: false }],
  ['queen, 4 layers', { size: 'queen' }, { passed: ['4 layers'] }],
  ['queen with batting', { size: 'queen' }, { middle: true }],
  ['queen without batting', { size: 'queen' }, { middle: false }],
  ['2 layers with batting, queen', { size: 'queen' }, { middle: false, passed: ['batting'] }],
  ['lap, washed once', { size: 'lap' }, { washes: 1 }],
  ['lap after 5 washes', { size: 'lap' }, { washes: 5 }],
  ['lap, washed 10 times', { size: 'lap' }, { washes: 10 }],
  ['lap, washed 80 times', { size: 'lap' }, { passed: ['80 times'] }],
  ['lap, after washing', { size: 'lap' }],
  ['baby quilt', { size: 'cot' }, { infant: true }],
  [
    'baby quilt with scalloped edges',
    { size: 'cot' },
    { infant: true, passed: ['scalloped edges'] },
  ],
  ['crib quilt, 4 prints', { size: 'cot' }, { infant: true, prints: 4 }],
  ['50 by 60, queen', { width: 50, height: 60 }, { passed: ['queen'] }],
  ['40 by 50, purple', { width: 40, height: 50 }, { passed: ['purple'] }],
  ['40 by 50 inches with 30 buttons', { width: 40, height: 50 }, { passed: ['30 buttons'] }],
  ['40 by 50 before washing', { width: 40, height: 50, at: 'sewn' }],
  ['40 x 50, 3 layers of 2 prints', { width: 40, height: 50 }, { prints: 2, middle: true }],
  ['a quilt for my gran, 40 by 50', { width: 40, height: 50 }, { passed: ['gran'] }],
  [
    'about 40 by 50, scalloped, with hearts',
    { width: 40, height: 50 },
    { passed: ['scalloped', 'hearts'] },
  ],
  [
    '6 by 8 blocks of 10 inches, four prints',
    { columns: 6, rows: 8 },
    { block: { cut: 10 }, prints: 4 },
  ],
  ['queen 10 by 12 blocks', { columns: 10, rows: 12 }, { passed: ['queen'] }],
  ['8 rows of 6, blue', { columns: 6, rows: 8 }, { passed: ['blue'] }],
  [
    'queen bed with 15 inch drop, purple',
    { bed: { width: 60, length: 80, drop: 15 } },
    { passed: ['purple'] },
  ],
  ['60 by 80, overhang 12, 5 prints', { bed: { width: 60, length: 80, drop: 12 } }, { prints: 5 }],
  ['a king size bed in the UK', { size: 'king', region: 'uk' }],
  ['throw of 2 or 3 prints', { size: 'throw' }, { passed: ['2', '3 prints'] }],
  ['una manta para mi cama, 40 x 50, 3 capas', { width: 40, height: 50 }, { middle: true }],
  ['eine Decke 40 x 50 aus 5 Stoffen bitte', { width: 40, height: 50 }, { prints: 5 }],
  ['un plaid pour mon lit, 40 par 50, 4 tissus', { width: 40, height: 50 }, { prints: 4 }],
];

/** Words without a figure, of all that a wish may speak of. */
const NEUTRAL = [
  ...['a', 'quilt', 'about', 'for', 'my', 'baby', 'queen', 'bed', 'throw,', 'warm', 'blue'],
  ...['with', 'wide', 'seams,', 'blocks,', 'squares,', '-', 'hanging', 'drop', 'sewn by', 'hand'],
  ...['or', 'and', 'half', 'inch-perfect', 'pillow,', 'rows,', '8 inch blocks,', '1/2 inch seams,'],
] as const;

/** All that was read, without the words that were passed over. */
function without(wish: Outcome<ReadWish>): Omit<ReadWish, 'passed'> | undefined {
  if (!wish.ok) return undefined;
  const { passed: _passed, ...rest } = wish.value;
  return rest;
}

function complete([words, unit, target, beside = {}]: Row) {
  return [words, unit, target, beside] as const;
}

describe('readWish', () => {
  test.each(INCHES.map(complete))('readWish understands “%s”', (words, unit, target, beside) => {
    expect(without(readWish(words, 'in'))).toEqual({ unit, target, ...beside });
  });

  test.each(CENTIMETRES.map(complete))(
    'readWish of one who measures in cm understands “%s”',
    (words, unit, target, beside) => {
      expect(without(readWish(words, 'cm'))).toEqual({ unit, target, ...beside });
    },
  );

  test.each(WHOLE.map(([words, ...value]) => [words, value] as const))(
    'readWish takes or tells every word of “%s”',
    (words, [target, beside]) => {
      expect(readWish(words, 'in')).toEqual({ ok: true, value: { unit: 'in', target, ...beside } });
    },
  );

  test('readWish keeps the unit on the screen until a wish names another', () => {
    for (const unit of ['in', 'cm'] as const) {
      for (const [words, named] of [
        ['throw', unit],
        ['40 by 50', unit],
        ['1 m by 2 m', 'cm'],
        ['40 by 50 in', 'in'],
      ]) {
        const wish = readWish(words ?? '', unit);
        expect([words, wish.ok && wish.value.unit]).toEqual([words, named]);
      }
    }
  });

  test.each(UNCLEAR)('readWish finds no size in “%s”', (words) => {
    const fault = { code: 'wish-unclear', path: [], received: words };
    expect(readWish(words, 'in')).toEqual({ ok: false, faults: [fault] });
  });

  test('readWish gives a target that can be planned, for every wish above', () => {
    const rows = [INCHES, CENTIMETRES].flatMap((rows, at) =>
      rows.map(([words]) => ({ words, unit: at === 0 ? ('in' as const) : ('cm' as const) })),
    );
    for (const { words, unit } of rows) {
      const wish = readWish(words, unit);
      if (!wish.ok) throw new Error(words);
      const { ok } = resolvePlan(wish.value);
      expect([words, ok]).toEqual([words, true]);
    }
  });

  test('readWish reads two plain sides as they are, whatever the words around them', () => {
    const side = fc.integer({ min: 20, max: 200 });
    const around = fc.array(fc.constantFrom(...NEUTRAL), { maxLength: 5 });
    fc.assert(
      fc.property(side, side, around, around, (width, height, before, after) => {
        const words = [...before, `${width} by ${height};`, ...after].join(' ');
        const wish = readWish(words, 'in');
        expect([words, wish.ok && wish.value.target]).toEqual([words, { width, height }]);
      }),
    );
  });

  test('readWish says of whom a wish speaks by whole words alone, figures or none', () => {
    for (const word of ['cot', 'Crib', 'BABY', 'infants', 'newborn', 'nursery', 'cot-bed']) {
      const wish = readWish(`for the ${word}: 40 by 50`, 'in');
      expect([word, wish.ok && wish.value.infant]).toEqual([word, true]);
    }
    for (const word of ['cottage', 'scribble', 'babylon', 'apricot', 'infantry']) {
      const wish = readWish(`for the ${word}: 40 by 50`, 'in');
      expect([word, wish.ok && wish.value.infant]).toEqual([word, undefined]);
    }
  });

  test('readWish leaves an unclear comma for the field to ask about', () => {
    const wish = readWish('2,000 x 1500 mm', 'in');
    if (!wish.ok) throw new Error('no wish');
    expect(resolvePlan(wish.value)).toMatchObject({
      ok: false,
      faults: [{ code: 'unclear-comma', path: ['target', 'width'] }],
    });
  });

  test('readWish reads any text without an exception, and quickly', () => {
    const letters = fc.constantFrom(...'0123456789 .,/xby"\'½mcinft-wl'.split(''));
    const texts = fc.oneof(
      fc.string({ maxLength: 400 }),
      fc.string({ unit: letters, maxLength: 400 }),
    );
    fc.assert(
      fc.property(texts, fc.constantFrom('in' as const, 'cm' as const), (text, unit) => {
        const wish = readWish(text, unit);
        return wish.ok || wish.faults.length === 1;
      }),
      { numRuns: 500 },
    );
  });
});
