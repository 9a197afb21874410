import { describe, expect, test } from 'vitest';
import type { LayerInput, PlanRequest } from '#core/contract.ts';
import { toMillimetres } from '#core/length.ts';
import { predictWash } from '#core/wash.ts';
import { readWish } from '#core/wish/read-wish.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { answerWish, type Bolt, loadScenario, loadWish } from '../../demo-data/load-scenario.ts';
import { listFiles } from '../structure/source-tree.ts';

const scenario = loadScenario();
const boltOf = (id: string) => scenario.bolts.find((bolt) => bolt.id === id);
const layersOf = (file: string) => answerWish(file).input.layers;

/** Dimensional change of bolts, as the service itself reckons it from their swatches. */
function measure(bolts: readonly Bolt[], direction: 'length' | 'width'): number {
  const swatches = bolts.flatMap(({ swatches: { before, ...after } }) =>
    after[direction].map((length) => ({ direction, before, after: length })),
  );
  const resolved = resolveWash({ unit: 'cm', swatches });
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return predictWash(resolved.value).swatches[0]?.change ?? Number.NaN;
}

describe('loadScenario', () => {
  test('loadScenario() says that it is invented', () => {
    expect(scenario.about).toMatch(/^An invented scenario\..*do not exist/);
  });

  test('loadScenario() names each request and each answer, and there are no others', () => {
    const named = scenario.wishes.map(({ file }) => file).toSorted();
    for (const folder of ['wishes', 'answers']) {
      const found = listFiles(`demo-data/${folder}/*`);
      expect(found).toEqual(named.map((file) => `demo-data/${folder}/${file}`));
    }
  });

  test.each(scenario.bolts)('$id costs the same by the yard and by the metre', ({ price }) => {
    // A yard is 0.9144 m exactly (international agreement of 1959); prices go to the hundredth.
    expect(price.m).toBe(Math.round((100 * price.yd) / 0.9144) / 100);
  });

  test.each(scenario.bolts)('$id is as wide in inches as in centimetres', ({ width }) => {
    const difference = toMillimetres(width.in, 'in') - toMillimetres(width.cm, 'cm');
    // The two are said in whole inches and in millimetres, as a bolt says them.
    expect(Math.abs(difference)).toBeLessThan(2);
  });
});

describe('loadWish', () => {
  test('loadWish gives three kinds of target, one of them metric, and none the same', () => {
    const requests = scenario.wishes.map(({ file }) => loadWish(file));
    const kinds = requests.map(({ target }) => Object.keys(target).toSorted().join());
    expect(new Set(kinds).size).toBe(3);
    expect(requests.map(({ unit }) => unit)).toEqual(['in', 'in', 'cm']);
  });

  test.each(scenario.wishes)('$file asks for cloth that hangs in the shop', ({ file }) => {
    const { unit } = answerWish(file).input;
    for (const { fabric, prints } of layersOf(file)) {
      for (const { id, width, directional, color } of prints) {
        const bolt = boltOf(id);
        expect(bolt).toMatchObject({ fabric, color });
        expect(bolt?.directional ?? false).toBe(directional);
        expect(width).toBe(bolt?.width[unit]);
      }
    }
  });

  test.each(scenario.wishes)('$file has the shrink that the swatches show', ({ file }) => {
    const expected = (layer: LayerInput, direction: 'length' | 'width') => {
      const bolts = layer.prints.flatMap(({ id }) => boltOf(id) ?? []);
      // AATCC TM135 gives dimensional change to the nearest 0.1 %, shrinkage being negative.
      return Math.round(-10 * measure(bolts, direction)) / 10;
    };
    for (const layer of layersOf(file)) {
      const { length, width } = layer.shrink;
      expect([length, width]).toEqual([expected(layer, 'length'), expected(layer, 'width')]);
    }
  });

  test('loadWish says in figures what the reading room says in words', () => {
    const { says, file } = scenario.wishes[0] ?? { says: '', file: '' };
    const { unit, target }: PlanRequest = loadWish(file);
    expect(readWish(says, 'cm')).toMatchObject({ ok: true, value: { unit, target } });
  });
});

describe('answerWish', () => {
  const dangers = (file: string) =>
    answerWish(file)
      .cautions.filter(({ severity }) => severity === 'danger')
      .map(({ code }) => code);

  test('answerWish warns of a sleeping baby for the quilt of cot size', () => {
    expect(dangers('floor-for-pim.json')).toEqual(['infant-sleep']);
  });

  test.each(['reading-room.json', 'guest-bed.json'])('answerWish(%j) has no danger', (file) => {
    expect(dangers(file)).toEqual([]);
  });

  test('answerWish gives three quilts of different sizes', () => {
    const blocks = scenario.wishes.map(({ file }) => answerWish(file).grid.blocks);
    expect(new Set(blocks).size).toBe(3);
  });
});
