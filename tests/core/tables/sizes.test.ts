import { describe, expect, test } from 'vitest';
import { isCotSize } from '#core/cautions.ts';
import type { Region, SizeName } from '#core/contract.ts';
import { LENGTH_LIMITS } from '#core/limits.ts';
import { findSize, listSizes, SIZES } from '#core/tables/sizes.ts';

const REGIONS: readonly Region[] = ['us', 'uk', 'eu'];

describe('SIZES', () => {
  test('SIZES have one row a name and region, and a source each', () => {
    const keys = SIZES.map((row) => `${row.region} ${row.name}`);
    expect(new Set(keys).size).toBe(SIZES.length);
    for (const row of SIZES) expect(row.source).not.toBe('');
  });

  test('SIZES know every name of the contract in one region at least', () => {
    const names: Record<SizeName, true> = {
      cot: true,
      lap: true,
      throw: true,
      twin: true,
      single: true,
      full: true,
      double: true,
      queen: true,
      king: true,
      'california-king': true,
      'super-king': true,
    };
    const known = new Set(SIZES.map((row) => row.name));
    expect([...known].toSorted()).toEqual(Object.keys(names).toSorted());
  });

  test('SIZES are longer than wide and inside what a request may ask for', () => {
    for (const row of SIZES) {
      expect(row.width).toBeLessThanOrEqual(row.height);
      const limit = row.kind === 'bed' ? LENGTH_LIMITS.bedSide : LENGTH_LIMITS.targetSide;
      expect(row.width).toBeGreaterThanOrEqual(limit.least);
      expect(row.height).toBeLessThanOrEqual(limit.most);
    }
  });

  test('SIZES grow from cot to lap to throw, and from single to double to king, in every region', () => {
    for (const region of REGIONS) {
      for (const names of [
        ['cot', 'lap', 'throw'],
        ['single', 'double', 'king'],
      ] as const) {
        const widths = names.map((name) => findSize(name, region)?.width ?? Number.NaN);
        expect(widths).toEqual(widths.toSorted((one, other) => one - other));
        expect(new Set(widths).size).toBe(3);
      }
    }
  });

  test('SIZES: a cot is of cot size everywhere, a throw and every bed is not', () => {
    for (const row of SIZES) {
      if (row.name === 'cot') expect(isCotSize(row)).toBe(true);
      if (row.name === 'throw' || row.kind === 'bed') expect(isCotSize(row)).toBe(false);
    }
  });
});

describe('findSize', () => {
  test('findSize(queen) is 60 in wide in the us, 160 cm in the eu, and unknown in the uk', () => {
    expect(findSize('queen', 'us')?.width).toBe(1524);
    expect(findSize('queen', 'eu')?.width).toBe(1600);
    expect(findSize('queen', 'uk')).toBeUndefined();
  });

  test('findSize finds every row by its name and region', () => {
    for (const row of SIZES) expect(findSize(row.name, row.region)).toBe(row);
  });
});

describe('listSizes', () => {
  test('listSizes lists exactly what findSize finds', () => {
    for (const region of REGIONS) {
      const known = [...new Set(SIZES.map((row) => row.name))].filter(
        (name) => findSize(name, region) !== undefined,
      );
      expect(listSizes(region).toSorted()).toEqual(known.toSorted());
    }
  });

  test('listSizes(uk) has the super king, listSizes(us) the California king', () => {
    expect(listSizes('uk')).toContain('super-king');
    expect(listSizes('us')).toContain('california-king');
    expect(listSizes('eu')).not.toContain('california-king');
  });
});
