import { describe, expect, test } from 'vitest';
import { findSize, SIZES } from '#core/tables/sizes.ts';
import { readSizeName } from '#core/wish/read-size-name.ts';

describe('readSizeName', () => {
  test('readSizeName knows every name of the table, with hyphen, space or neither', () => {
    for (const name of new Set(SIZES.map((row) => row.name))) {
      for (const spelling of [name, name.replace('-', ' '), name.replace('-', '')]) {
        const target = readSizeName(`a ${spelling} quilt`, 'in')?.target;
        expect(target).toMatchObject({ size: name });
      }
    }
  });

  test('readSizeName names a region that has the size, where the usual one has not', () => {
    for (const { name } of SIZES) {
      for (const unit of ['in', 'cm'] as const) {
        const target = readSizeName(name, unit)?.target;
        if (target === undefined || !('size' in target)) throw new Error(name);
        const region = target.region ?? (unit === 'in' ? 'us' : 'eu');
        expect(findSize(target.size, region)).toBeDefined();
      }
    }
  });

  test('readSizeName takes the region that was named, even one without the size', () => {
    expect(readSizeName('a UK queen', 'in')?.target).toEqual({ size: 'queen', region: 'uk' });
    expect(readSizeName('European double', 'in')?.target).toEqual({ size: 'double', region: 'eu' });
    expect(readSizeName('a US full', 'cm')?.target).toEqual({ size: 'full', region: 'us' });
  });

  test('readSizeName takes the first of two sizes unless they are a choice', () => {
    expect(readSizeName('a lap quilt for my king', 'in')?.target).toEqual({ size: 'lap' });
    expect(readSizeName('queen or king', 'in')).toBeUndefined();
    expect(readSizeName('a couch throw or sofa throw', 'in')?.target).toEqual({ size: 'throw' });
  });
});
