import { describe, expect, test } from 'vitest';
import { explainSewing } from '#core/plan/explain-sewing.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

const request = { target: { width: 40, height: 50 } };

describe('explainSewing', () => {
  test('explainSewing tells of fringe, weight, row ends and hours', () => {
    const explained = explainedFor(request);
    const rows = explainSewing(explained);
    expect(judgeDerivations(rows, explained.figures)).toEqual([]);
    const told = new Set(rows.map(({ path }) => path));
    for (const name of Object.keys(explained.figures.fringe))
      expect(told).toContain(`fringe.${name}`);
    for (const path of [
      'weight.dry',
      'weight.wet',
      'weight.washer.drumLitres',
      'mismatch.rowDeviation',
      'mismatch.perEndFromOneEnd',
      'mismatch.perEndFromCentre',
      'time.total',
    ]) {
      expect(told).toContain(path);
    }
  });

  test('explainSewing weighs in kilograms where lengths are in centimetres', () => {
    const explained = explainedFor({ unit: 'cm', target: { width: 100, height: 130 } });
    expect(judgeDerivations(explainSewing(explained), explained.figures)).toEqual([]);
    expect(explained.figures.weight.unit).toBe('kg');
  });
});
