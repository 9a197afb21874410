import { describe, expect, test } from 'vitest';
import type { FabricName } from '#core/contract.ts';
import { NUMBER_LIMITS } from '#core/limits.ts';
import { FABRICS, findFabric } from '#core/tables/fabrics.ts';

describe('FABRICS', () => {
  test('FABRICS have a name each, and a source', () => {
    expect(new Set(FABRICS.map((row) => row.name)).size).toBe(FABRICS.length);
    for (const row of FABRICS) expect(row.source).not.toBe('');
  });

  test('FABRICS have a row for every name of the contract', () => {
    const names: Record<FabricName, true> = {
      'quilting-cotton': true,
      flannel: true,
      denim: true,
      plush: true,
      fleece: true,
      'linen-cotton': true,
      'cotton-batting': true,
      'blend-batting': true,
      'polyester-batting': true,
      'bamboo-batting': true,
    };
    expect(FABRICS.map((row) => row.name).toSorted()).toEqual(Object.keys(names).toSorted());
  });

  test('FABRICS have ranges in order, inside what a request may say', () => {
    for (const { length, width } of FABRICS) {
      for (const { low, usual, high } of [length, width]) {
        expect(low).toBeLessThanOrEqual(usual);
        expect(usual).toBeLessThanOrEqual(high);
        expect(low).toBeGreaterThanOrEqual(NUMBER_LIMITS.shrink.least);
        expect(high).toBeLessThanOrEqual(NUMBER_LIMITS.shrink.most);
      }
    }
  });

  test('FABRICS shrink along the roll at least as much as across it', () => {
    for (const { length, width } of FABRICS) {
      expect(length.usual).toBeGreaterThanOrEqual(width.usual);
      expect(length.high).toBeGreaterThanOrEqual(width.high);
    }
  });

  test('FABRICS have mass, thickness, rate and grip inside their ranges', () => {
    for (const { gsm, thickness, rate, grip } of FABRICS) {
      expect(gsm).toBeGreaterThanOrEqual(NUMBER_LIMITS.gsm.least);
      expect(gsm).toBeLessThanOrEqual(NUMBER_LIMITS.gsm.most);
      expect(thickness).toBeGreaterThanOrEqual(NUMBER_LIMITS.thickness.least);
      expect(thickness).toBeLessThanOrEqual(NUMBER_LIMITS.thickness.most);
      expect(rate > 0 && rate < 1).toBe(true);
      expect(grip > 0 && grip <= 1).toBe(true);
    }
  });

  test('FABRICS pull: cloth fully, batting less and alike both ways', () => {
    for (const row of FABRICS) {
      const isBatting = row.name.endsWith('batting');
      expect(row.grip < 1).toBe(isBatting);
      if (isBatting) expect(row.length).toEqual(row.width);
    }
  });
});

describe('findFabric', () => {
  test('findFabric(flannel) is the row of flannel, and so for every name', () => {
    expect(findFabric('flannel').gsm).toBe(170);
    for (const row of FABRICS) expect(findFabric(row.name)).toBe(row);
  });

  test('findFabric of no fabric is a mistake of the caller', () => {
    expect(() => findFabric('felt' as FabricName)).toThrow('No fabric named felt');
  });
});
