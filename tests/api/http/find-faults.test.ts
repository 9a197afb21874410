import { expect, test } from 'vitest';
import { findFaults } from '../../../api/http/find-faults.ts';
import { resolveToy, toySchema } from '../../support/toy-endpoint.ts';

const find = (input: unknown) =>
  findFaults({ schema: toySchema, resolve: resolveToy }, input).map(
    ({ code, path }) => `${code} ${path.join('.')}`,
  );

test('findFaults tells what the core finds in the sound parts beside what the schema refused', () => {
  expect(find({ id: 'a', count: 7, foo: 1, list: ['x'] })).toEqual([
    'wrong-type list.0',
    'unknown-key foo',
    'too-large count',
  ]);
});

test('findFaults tells the schema’s faults alone where the rest is no whole request', () => {
  expect(find({ count: 7, foo: 1 })).toEqual(['missing id', 'unknown-key foo']);
});

test('findFaults does not judge a part by a default that took its place', () => {
  expect(find({ id: 'a', count: 'x' })).toEqual(['wrong-type count']);
});

test('findFaults leaves out what the core says of a place already named', () => {
  const endpoint = {
    schema: toySchema,
    resolve: () => ({
      ok: false as const,
      faults: [
        { code: 'too-small' as const, path: ['list', 1] },
        { code: 'too-small' as const, path: ['list'] },
        { code: 'too-small' as const, path: ['id'] },
      ],
    }),
  };
  const faults = findFaults(endpoint, { id: 'a', list: ['x'] });
  expect(faults.map(({ path }) => path.join('.'))).toEqual(['list.0', 'id']);
});

test('findFaults gives the core’s faults for an input of the right shape, and none for a right one', () => {
  expect(find({ id: 'a', count: 7 })).toEqual(['too-large count']);
  expect(find({ id: 'a' })).toEqual([]);
});
