import { expect, test } from 'vitest';
import * as z from 'zod';
import { describeInput, nameRequest } from '../../../api/docs/describe-operations.ts';

test('describeInput tells what may be sent, not what comes out', () => {
  const schema = z.strictObject({ a: z.number().default(1) });
  expect(describeInput(schema)).toEqual({
    type: 'object',
    properties: { a: { default: 1, type: 'number' } },
    additionalProperties: false,
  });
});

test('describeInput refuses what JSON Schema cannot say', () => {
  expect(() => describeInput(z.object({ a: z.date() }))).toThrow();
});

test('nameRequest makes a name of an address', () => {
  expect(nameRequest('/v1/wash-shrinkage')).toBe('WashShrinkageRequest');
  expect(nameRequest('/v1/plan.svg')).toBe('PlanSvgRequest');
});
