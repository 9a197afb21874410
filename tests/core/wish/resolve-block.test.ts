import { describe, expect, test } from 'vitest';
import type { PlanRequest, Unit } from '#core/contract.ts';
import { startReading, writeQuery } from '#core/wish/reading.ts';
import { resolveBlock, resolveCuts } from '#core/wish/resolve-block.ts';

const read = (request: PlanRequest) => {
  const reading = startReading(request.unit);
  const block = resolveBlock(reading, request);
  const cuts = resolveCuts(reading, request.cuts);
  return { block, cuts, ...reading, query: writeQuery(reading.kept) };
};
const target = { width: 40, height: 50 };

describe('resolveBlock', () => {
  test.each<[Unit, object]>([
    ['in', { seam: 1, snipDepth: 0.5, snipPitch: 0.25 }],
    ['cm', { seam: 2.5, snipDepth: 1.25, snipPitch: 0.6 }],
  ])(
    'resolveBlock in %s has the usual seam and snips, and leaves the cut to choose',
    (unit, block) => {
      expect(read({ unit, target: { size: 'throw' } }).block).toEqual(block);
    },
  );

  test('resolveBlock has a cut of its own where the grid is given', () => {
    const { block, query, assumptions } = read({ target: { columns: 6, rows: 8 } });
    expect(block.cut).toBe(8.5);
    expect(query).toBe('');
    expect(assumptions).toContainEqual(expect.objectContaining({ path: 'block.cut', value: 8.5 }));
  });

  test('resolveBlock keeps a cut that was asked for, also the usual one', () => {
    expect(read({ target, block: { cut: '8 1/2' } }).query).toBe('block.cut=8.5');
  });
});

describe('resolveCuts', () => {
  test('resolveCuts takes 6 to 12 in by the half, or 15 to 30 cm by the whole', () => {
    const inches = read({ target }).cuts;
    expect(inches.cuts).toHaveLength(13);
    expect([inches.cuts.at(0), inches.cuts.at(1), inches.cuts.at(-1)]).toEqual([6, 6.5, 12]);
    const metric = read({ unit: 'cm', target: { size: 'throw' } }).cuts;
    expect(metric.cuts).toHaveLength(16);
    expect([metric.cuts.at(0), metric.cuts.at(1), metric.cuts.at(-1)]).toEqual([15, 16, 30]);
  });

  test('resolveCuts sorts, drops what is said twice, and knows where each stood', () => {
    const { cuts, query } = read({ target, cuts: ['10', 8, '25.4 cm', '8 in', 9] });
    expect(cuts).toEqual({ cuts: [8, 9, 10], places: [1, 4, 0] });
    expect(query).toBe('cuts.0=8&cuts.1=9&cuts.2=10');
  });

  test('resolveCuts of the usual ones spelt out is as if they were left out', () => {
    const left = read({ target });
    const spelt = read({ target, cuts: left.cuts.cuts.toReversed() });
    expect(spelt).toEqual(left);
    expect(left.cuts).not.toHaveProperty('places');
    expect(left.assumptions).toContainEqual(
      expect.objectContaining({ path: 'cuts', value: '6 to 12 in' }),
    );
  });

  test('resolveCuts gives each wrong one its fault', () => {
    expect(read({ target, cuts: [8, 'x', 900] }).faults).toMatchObject([
      { code: 'not-a-length', path: ['cuts', 1] },
      { code: 'too-large', path: ['cuts', 2] },
    ]);
  });
});

describe('the default snip', () => {
  test('resolveBlock snips half the seam where no depth is given, so that a narrow seam needs no second thought', () => {
    const reading = startReading('in');
    const request = { target: { width: 40, height: 50 }, block: { seam: '1/2' } } as const;
    expect(resolveBlock(reading, request)).toMatchObject({ seam: 0.5, snipDepth: 0.25 });
    expect(reading.faults).toEqual([]);
  });
});
