import { describe, expect, test } from 'vitest';
import type { KitsRequest, Layer } from '#core/contract.ts';
import { startReading } from '#core/wish/reading.ts';
import { resolveFibres } from '#core/wish/resolve-fibres.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const classic: readonly Layer[] = [{ role: 'top' }, { role: 'backing' }];
const cotton = [{ fibre: 'cotton', percent: 100 }];
const read = (given: NonNullable<KitsRequest['fibres']>, layers = classic) => {
  const plan = resolvePlan({ target: { columns: 3, rows: 3 }, layers });
  if (!plan.ok) throw new Error('refused');
  const reading = startReading('in');
  return { fibres: resolveFibres(reading, given, plan.value.input), reading };
};

describe('resolveFibres', () => {
  test('resolveFibres without word is what such cloth usually is, and told', () => {
    const { fibres, reading } = read({});
    expect(fibres).toEqual({ top: cotton, backing: cotton });
    expect(reading.assumptions.slice(1)).toMatchObject([
      { path: 'fibres.top', value: '100% cotton' },
      { path: 'fibres.backing', value: '100% cotton' },
    ]);
    expect(reading.kept).toEqual([]);
  });

  test('resolveFibres keeps what was said, unless it is the usual', () => {
    const blend = [
      { fibre: 'linen', percent: 60 },
      { fibre: 'cotton', percent: 40 },
    ];
    const { fibres, reading } = read({ top: blend, backing: cotton });
    expect(fibres.top).toEqual(blend);
    expect(reading.kept).toEqual([
      ['fibres.top.0.fibre', 'linen'],
      ['fibres.top.0.percent', '60'],
      ['fibres.top.1.fibre', 'cotton'],
      ['fibres.top.1.percent', '40'],
    ]);
  });

  test('resolveFibres blends two middle layers by their mass', () => {
    const layers: readonly Layer[] = [
      { role: 'top' },
      { role: 'middle', fabric: 'cotton-batting', gsm: 100 },
      { role: 'middle', fabric: 'polyester-batting', gsm: 300 },
      { role: 'backing' },
    ];
    expect(read({}, layers).fibres.middle).toEqual([
      { fibre: 'polyester', percent: 75 },
      { fibre: 'cotton', percent: 25 },
    ]);
  });

  test('resolveFibres refuses percents that do not come to a hundred', () => {
    expect(read({ top: [{ fibre: 'cotton', percent: 99.5 }] }).reading.faults).toEqual([
      {
        code: 'percents-do-not-sum',
        path: ['fibres', 'top'],
        expected: '100 in all',
        received: 99.5,
      },
    ]);
    const thirds = ['a', 'b', 'c'].map((fibre) => ({ fibre, percent: 33.333 }));
    expect(read({ top: thirds }).reading.faults).toEqual([]);
  });

  test('resolveFibres refuses fibres of a layer that is not there', () => {
    expect(read({ middle: cotton }).reading.faults).toMatchObject([
      { code: 'not-one-of', path: ['fibres', 'middle'], expected: ['top', 'backing'] },
    ]);
  });
});
