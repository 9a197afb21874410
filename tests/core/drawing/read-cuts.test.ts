import { describe, expect, test } from 'vitest';
import { readCuts } from '#core/drawing/read-cuts.ts';
import { cutFabrics, mixedBolt } from '../../support/cuts.ts';

describe('readCuts', () => {
  test('readCuts names the fabric, what is bought and how wide it is used', () => {
    const [roll] = readCuts(cutFabrics(mixedBolt), 0);
    expect(roll?.title).toMatch(/^Heron dot, .* yd, 43 in across$/);
    expect(roll?.keys).toEqual([
      'A block, 8½ × 8½ in, 42 wanted',
      'B border, 4 × 40 in, 4 wanted; dashed: turned a quarter',
      'C label, 3 × 5 in, 7 wanted',
    ]);
  });

  test('readCuts gives all that is bought: squaring-up, strips, and the rest', () => {
    const answer = cutFabrics(mixedBolt);
    const [bought] = answer.fabrics[0]?.buy ?? [];
    const [roll] = readCuts(answer, 0);
    const { groups = [], squaring = 0, rest = 0 } = roll?.roll ?? {};
    const strips = groups.reduce((sum, { count, length }) => sum + count * length, 0);
    const yards = bought?.unit === 'yd' ? bought.amount : 0;
    expect(squaring + strips + rest).toBeCloseTo(yards * 914.4, 3);
  });

  test('readCuts has a sheet for each kind of flat piece that is cut', () => {
    const answer = cutFabrics({
      id: 'Oat sprig',
      width: 42,
      offers: [{ kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1 }],
      pieces: [{ id: 'block', width: 8, length: 8, count: 8 }],
    });
    const sheets = readCuts(answer, 0);
    expect(sheets.map(({ title }) => title)).toEqual(['Oat sprig, quarter, 2 alike']);
    expect(sheets[0]?.roll).toMatchObject({ squaring: 0, width: 533.4 });
  });

  test('readCuts of a fabric that is not there is empty', () => {
    expect(readCuts(cutFabrics(mixedBolt), 3)).toEqual([]);
  });
});
