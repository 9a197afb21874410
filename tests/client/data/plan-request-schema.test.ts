import { readFileSync } from 'node:fs';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { NUMBER_LIMITS } from '#core/limits.ts';
import { planRequestSchema } from '../../../client/data/plan-request-schema.ts';

const is = (rest: object) => v.is(planRequestSchema, { target: { size: 'lap' }, ...rest });

describe('planRequestSchema', () => {
  test.each([
    ['washes', NUMBER_LIMITS.washes, 1],
    ['spare', NUMBER_LIMITS.spare, 0.1],
  ] as const)(
    'planRequestSchema takes %s within its limits and not beyond',
    (name, { least, most }, step) => {
      expect(is({ [name]: least })).toBe(true);
      expect(is({ [name]: most })).toBe(true);
      expect(is({ [name]: least - step })).toBe(false);
      expect(is({ [name]: most + step })).toBe(false);
    },
  );

  test('planRequestSchema takes a class of one to sixty pupils', () => {
    expect([1, 60].map((pupils) => is({ pupils }))).toEqual([true, true]);
    expect([0, 61, 1.5].some((pupils) => is({ pupils }))).toBe(false);
  });

  test('planRequestSchema takes whether it is for an infant as true or false alone', () => {
    expect([is({ infant: true }), is({ infant: false }), is({ infant: 'yes' })]).toEqual([
      true,
      true,
      false,
    ]);
  });

  test('planRequestSchema takes one to eight offers of a layer', () => {
    const sold = (count: number) => {
      const offers = Array.from({ length: count }, (_, at) => ({ kind: 'roll', id: `${at}` }));
      return is({ layers: [{ role: 'top', offers }, { role: 'backing' }] });
    };
    expect([0, 1, 8, 9].map(sold)).toEqual([false, true, true, false]);
  });

  test('planRequestSchema leaves out what is left out', () => {
    const { output } = v.safeParse(planRequestSchema, { target: { size: 'lap' } });
    expect(output).toEqual({ target: { size: 'lap' } });
  });

  test('planRequestSchema is bound to the contract by a line that compiles only while they are one shape', () => {
    const source = readFileSync('client/data/plan-request-schema.ts', 'utf8');
    expect(source).toMatch(
      /SameShape<v\.InferOutput<typeof planRequestSchema>, PlanRequest> =\s+true;/,
    );
  });
});
