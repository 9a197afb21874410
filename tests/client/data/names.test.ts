import { describe, expect, test } from 'vitest';
import { FABRICS } from '#core/tables/fabrics.ts';
import { SIZES } from '#core/tables/sizes.ts';
import {
  FABRIC_NAMES,
  REQUEST_KEYS,
  SIZE_NAMES,
  UNKNOWN_SIZES,
  WASH_KEYS,
} from '../../../client/data/names.ts';
import { planRequestSchema } from '../../../client/data/plan-request-schema.ts';
import { washRequestSchema } from '../../../client/data/wash-request-schema.ts';

describe('names', () => {
  test('FABRIC_NAMES are those of the table of the core', () => {
    expect(FABRIC_NAMES.toSorted()).toEqual(FABRICS.map(({ name }) => name).toSorted());
  });

  test('SIZE_NAMES are those of the table of the core', () => {
    expect(SIZE_NAMES.toSorted()).toEqual([...new Set(SIZES.map(({ name }) => name))].toSorted());
  });

  test('UNKNOWN_SIZES are those that the table of the core lacks in a region', () => {
    for (const [region, unknown] of Object.entries(UNKNOWN_SIZES)) {
      const known = SIZES.filter((row) => row.region === region).map(({ name }) => name);
      const lacking = SIZE_NAMES.filter((name) => !known.includes(name));
      expect(unknown, region).toEqual(lacking);
    }
  });

  test('REQUEST_KEYS are those of a request', () => {
    expect(REQUEST_KEYS).toEqual(Object.keys(planRequestSchema.entries));
  });

  test('WASH_KEYS are those of a request about a wash', () => {
    expect(WASH_KEYS).toEqual(Object.keys(washRequestSchema.entries));
  });
});
