import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import {
  layoutRequestIsBound,
  layoutRequestSchema,
} from '../../../client/data/layout-request-schema.ts';

const least = { columns: 3, rows: 2, prints: [{ id: 'Moss' }, { id: 'Rust' }] };

describe('layoutRequestSchema', () => {
  test('layoutRequestSchema takes the least request and the whole one', () => {
    const prints = [
      { id: 'Moss', count: 3, value: 20, color: '#1b2233' },
      { id: 'Rust', count: 3, value: 80, color: '#a3302c' },
    ];
    const whole = { pattern: 'rings', touch: 'sides', fixed: ['A..', '...'], seed: 9, prints };
    expect(v.is(layoutRequestSchema, least)).toBe(true);
    expect(v.is(layoutRequestSchema, { ...least, ...whole })).toBe(true);
    expect(layoutRequestIsBound).toBe(true);
  });

  test.each([
    { columns: 0 },
    { columns: 41 },
    { rows: 2.5 },
    { prints: [{ id: 'Moss' }] },
    { prints: [{ id: '' }, { id: 'Rust' }] },
    { prints: [{ id: 'Moss', color: 'madder' }, { id: 'Rust' }] },
    { pattern: 'spiral' },
    { touch: 'all' },
    { fixed: ['A'.repeat(41)] },
    { seed: -1 },
  ])('layoutRequestSchema refuses %j', (change) => {
    expect(v.is(layoutRequestSchema, { ...least, ...change })).toBe(false);
  });
});
