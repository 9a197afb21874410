import { describe, expect, test } from 'vitest';
import { isLayoutAnswer, layoutIsBound } from '../../../client/data/is-layout-answer.ts';
import { computeLayout } from '../../../client/data/layout-on-device.ts';

function answer(): Record<string, unknown> {
  const query = 'columns=4&rows=3&prints.0.id=A&prints.0.color=%231b2233&prints.1.id=B';
  const outcome = computeLayout(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return JSON.parse(JSON.stringify(outcome.value));
}

describe('isLayoutAnswer', () => {
  test('isLayoutAnswer takes what the core answers, and what a later engine adds', () => {
    expect(isLayoutAnswer(answer())).toBe(true);
    expect(isLayoutAnswer({ ...answer(), later: 1 })).toBe(true);
    expect(layoutIsBound).toBe(true);
  });

  test.each(['input', 'links', 'cells', 'fewest', 'optimal', 'seed'])(
    'isLayoutAnswer refuses an answer without %s',
    (name) => {
      const { [name]: _gone, ...rest } = answer();
      expect(isLayoutAnswer(rest)).toBe(false);
    },
  );

  test.each([{ cells: [1, 2] }, { fewest: '0' }, { optimal: 'yes' }, { input: {} }])(
    'isLayoutAnswer refuses %j',
    (change) => {
      expect(isLayoutAnswer({ ...answer(), ...change })).toBe(false);
    },
  );
});
