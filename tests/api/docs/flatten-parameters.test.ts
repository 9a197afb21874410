import { describe, expect, test } from 'vitest';
import { flattenParameters } from '../../../api/docs/flatten-parameters.ts';
import type { JsonSchema } from '../../../api/docs/schema-shapes.ts';

const number = { type: 'number', description: 'n' };
const names = (schema: JsonSchema) => flattenParameters(schema).map(({ name }) => name);

describe('flattenParameters', () => {
  test('joins the names of groups by points, and shows a list by its first entry', () => {
    const list = { type: 'array', items: { type: 'object', properties: { b: number } } };
    expect(names({ properties: { a: { properties: { x: number } }, c: list } })).toEqual([
      'a.x',
      'c.0.b',
    ]);
  });
  test('requires what every input must have', () => {
    const inner = { properties: { x: number, y: number }, required: ['x'] };
    const required = flattenParameters({ properties: { a: inner, b: inner }, required: ['a'] })
      .filter((one) => one.required)
      .map(({ name }) => name);
    expect(required).toEqual(['a.x']);
  });
  test('requires nothing of a form that is one of several', () => {
    const anyOf = [
      { properties: { x: number, z: number }, required: ['x'] },
      { properties: { y: number, z: number }, required: ['y'] },
    ];
    const found = flattenParameters({ properties: { a: { anyOf } }, required: ['a'] });
    expect(found.map(({ name, required }) => [name, required])).toEqual([
      ['a.x', false],
      ['a.z', false],
      ['a.y', false],
    ]);
  });
  test('keeps a choice between single values whole', () => {
    const anyOf = [{ type: 'number' }, { type: 'string' }];
    expect(flattenParameters({ properties: { a: { anyOf, description: 'd' } } })).toEqual([
      { name: 'a', in: 'query', required: false, description: 'd', schema: { anyOf } },
    ]);
  });
  test('shows a choice between a value and a list as both', () => {
    const anyOf = [{ type: 'integer' }, { type: 'array', items: { type: 'string' } }];
    expect(names({ properties: { a: { anyOf } } })).toEqual(['a', 'a.0']);
  });
});
