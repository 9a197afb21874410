import { expect, test } from 'vitest';
import type { Fault } from '#core/outcome.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { findFaults, findMore } from '../../../api/http/find-faults.ts';
import { planSchema } from '../../../api/http/schemas/plan-schema.ts';
import { resolveToy, toySchema } from '../../support/toy-endpoint.ts';

const find = (input: unknown) =>
  findFaults({ schema: () => toySchema, resolve: resolveToy }, input).map(
    ({ code, path }) => `${code} ${path.join('.')}`,
  );

test('findFaults tells what the core finds in the sound parts beside what the schema refused', () => {
  expect(find({ id: 'a', count: 7, foo: 1, list: ['x'] })).toEqual([
    'wrong-type list.0',
    'unknown-key foo',
    'too-large count',
  ]);
});

test('findFaults judges the sound parts though one that is needed is missing, unless nothing is whole', () => {
  expect(find({ id: 'a', list: 'x', crash: 1, count: 7 })).toContain('too-large count');
  expect(find({ count: 7, list: [1] })).toEqual(['missing id', 'too-large count']);
  expect(find([])).toEqual(['wrong-type ']);
});

test('findFaults does not judge a part by a default that took its place', () => {
  expect(find({ id: 'a', count: 'x' })).toEqual(['wrong-type count']);
});

test('findFaults leaves out what the core says of a place already named', () => {
  const endpoint = {
    schema: () => toySchema,
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

test('findMore tells the faults of the reading first, then those of what is sound', () => {
  const more = (faults: readonly Fault[], sound?: unknown) =>
    findMore({ schema: () => toySchema, resolve: resolveToy }, { faults, sound }).map(
      ({ code, path }) => `${code} ${path.join('.')}`,
    );
  const twice = { code: 'repeated-key', path: ['count'] } as const;
  const lost = { code: 'malformed-query', path: ['id'] } as const;
  expect(more([twice], { id: 'a', count: 7, foo: 1 })).toEqual([
    'repeated-key count',
    'unknown-key foo',
    'too-large count',
  ]);
  expect(more([lost], { count: 0 })).toEqual(['malformed-query id', 'too-small count']);
  expect(more([twice], { id: 'a' })).toEqual(['repeated-key count']);
  expect(more([lost])).toEqual(['malformed-query id']);
});

test('findFaults of a plan judges one side of a target though the other cannot be read', () => {
  const tell = (input: unknown) =>
    findFaults({ schema: planSchema, resolve: resolvePlan }, input).map(
      ({ code, path }) => `${code} ${path.join('.')}`,
    );
  expect(tell({ target: { width: '0x10', height: '' }, foo: 1, washes: 0 })).toEqual([
    'empty target.height',
    'too-small washes',
    'unknown-key foo',
    'not-a-length target.width',
  ]);
  expect(tell({ target: { width: 'forty' } })).toEqual([
    'missing target.height',
    'not-a-length target.width',
  ]);
  // Nothing stands in for a number, and no rule is judged by what stands in for a length.
  expect(tell({ target: { columns: 'x', rows: 5 } })).toEqual(['wrong-type target.columns']);
  expect(tell({ target: { width: '', height: 400 } })).toEqual([
    'empty target.width',
    'too-large target.height',
  ]);
  expect(tell({ target: { width: '', height: 100 } })).toEqual(['empty target.width']);
});
