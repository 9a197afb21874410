import { describe, expect, test } from 'vitest';
import { derive } from '#core/plan/derive.ts';
import { evaluate } from '../../support/evaluate.ts';

describe('derive', () => {
  test('derive puts formula, numbers and value under a path with their source', () => {
    const row = derive('block.face', 'Plain geometry', [
      'cut - 2 * seam',
      { cut: 8.5, seam: 1 },
      6.5,
    ]);
    expect(row).toMatchObject({ path: 'block.face', source: 'Plain geometry', value: 6.5 });
    expect(evaluate(row.formula, row.numbers)).toBe(row.value);
  });
});
