import { describe, expect, test } from 'vitest';
import { hasShape, isListOf, isNumber, isOneOf, isText } from '../../../client/data/has-shape.ts';

const isPiece = hasShape({ width: isNumber, kind: isOneOf('roll', 'pack') }, { note: isText });

describe('hasShape', () => {
  test('hasShape takes an object with its fields, and passes over what else is there', () => {
    expect(isPiece({ width: 8, kind: 'roll' })).toBe(true);
    expect(isPiece({ width: 8, kind: 'pack', note: 'old', more: [] })).toBe(true);
  });

  test.each([
    ['nothing', undefined],
    ['null', null],
    ['a text', 'roll'],
    ['a missing field', { kind: 'roll' }],
    ['a field of another kind', { width: '8', kind: 'roll' }],
    ['a word that it does not know', { width: 8, kind: 'bolt' }],
    ['an infinite number', { width: Number.POSITIVE_INFINITY, kind: 'roll' }],
    ['another kind where a field may be left out', { width: 8, kind: 'roll', note: 3 }],
  ])('hasShape refuses %s', (_name, value) => {
    expect(isPiece(value)).toBe(false);
  });

  test('isListOf takes a list all of whose items are right', () => {
    expect(isListOf(isPiece)([])).toBe(true);
    expect(isListOf(isText)(['a', 'b'])).toBe(true);
    expect(isListOf(isText)(['a', 1])).toBe(false);
    expect(isListOf(isText)({ 0: 'a', length: 1 })).toBe(false);
  });
});
