import { expect, test } from 'vitest';
import { ENDPOINTS } from '../../../api/app.ts';
import { describeInput } from '../../../api/docs/describe-operations.ts';
import { KEY_ORDER } from '../../../client/api/key-order.ts';

test('KEY_ORDER names each key of a group once, and no key that the service does not know', () => {
  const known = new Set(
    ENDPOINTS.flatMap(({ schema }) =>
      [...JSON.stringify(describeInput(schema())).matchAll(/"([A-Za-z]+)":\{/g)].map(
        ([, key]) => key,
      ),
    ),
  );
  for (const keys of Object.values(KEY_ORDER)) {
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.filter((key) => !known.has(key))).toEqual([]);
  }
});
