import { expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { fillInput, pruneInput } from '../../../api/http/prune-input.ts';

test('pruneInput takes out what lies at each place and leaves the rest', () => {
  const input = { a: 1, b: { c: 2, d: 3 }, e: 4 };
  expect(pruneInput(input, [['a'], ['b', 'c']])).toEqual({ b: { d: 3 }, e: 4 });
});

test('pruneInput takes the whole list for a fault in it, the outermost', () => {
  expect(
    pruneInput({ l: [{ p: [1, 2] }], x: { m: [1] } }, [
      ['l', 0, 'p', 1],
      ['x', 'm', 0],
    ]),
  ).toEqual({ x: {} });
});

test('pruneInput leaves its input as it was', () => {
  const input = Object.freeze({ a: Object.freeze({ b: 1 }) });
  pruneInput(input, [['a', 'b']]);
  expect(input).toEqual({ a: { b: 1 } });
});

test('pruneInput passes over a place that is not there, and the root', () => {
  expect(pruneInput({ a: 1 }, [['b', 'c'], ['a', 'b'], []])).toEqual({ a: 1 });
  expect(pruneInput([1], [[0]])).toEqual([1]);
});

test('fillInput puts a text that is no length at each place, and leaves its input and lists alone', () => {
  const input = Object.freeze({ target: Object.freeze({ width: 40 }), cuts: [8] });
  const filled = fillInput(input, [['target', 'height'], ['cuts', 0], ['a', 'b'], []]);
  expect(filled).toEqual({ target: { width: 40, height: '?' }, cuts: [8] });
  expect(input.target).toEqual({ width: 40 });
  expect(readLength('?', 'in').ok).toBe(false);
});
