import { expect, test } from 'vitest';
import { keepEarly } from '../../../client/host/keep-early.ts';

test('keepEarly lets the setter of a class have what was set before it was one', () => {
  const got: unknown[] = [];
  const early = { value: 'a' };
  Object.setPrototypeOf(early, {
    set value(next: unknown) {
      got.push(next);
    },
  });
  keepEarly(early, 'value');
  expect(got).toEqual(['a']);
  expect(Object.hasOwn(early, 'value')).toBe(false);
});

test('keepEarly leaves alone what nobody set', () => {
  const element = {};
  keepEarly(element, 'value');
  expect(element).toEqual({});
});
