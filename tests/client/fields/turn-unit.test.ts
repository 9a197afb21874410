import { expect, test } from 'vitest';
import { turnUnit } from '../../../client/fields/turn-unit.ts';

test('turnUnit measures an inch as 2.54 cm, as the agreement of 1959 has it, and comes back', () => {
  expect(turnUnit(1, 'cm')).toBe(2.54);
  expect(turnUnit(36, 'cm')).toBe(91.44);
  for (const inches of [0.125, 8.5, 196.85]) {
    expect(turnUnit(turnUnit(inches, 'cm'), 'in')).toBeCloseTo(inches, 4);
  }
});
