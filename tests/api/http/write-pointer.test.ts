import { expect, test } from 'vitest';
import { writeParameter, writePointer } from '../../../api/http/write-pointer.ts';

test('writePointer escapes as the examples of RFC 6901 §5 do', () => {
  expect(writePointer([])).toBe('');
  expect(writePointer(['foo', 0])).toBe('/foo/0');
  expect(writePointer([''])).toBe('/');
  expect(writePointer(['a/b'])).toBe('/a~1b');
  expect(writePointer(['m~n'])).toBe('/m~0n');
  expect(writePointer(['c%d'])).toBe('/c%d');
  expect(writePointer([' '])).toBe('/ ');
});

test('writeParameter joins by points, as a query names the place', () => {
  expect(writeParameter(['layers', 0, 'width'])).toBe('layers.0.width');
});

test('writePointer and writeParameter cut short a key of more than 100 characters', () => {
  expect(writePointer(['k'.repeat(5000)]).length).toBe(102);
  expect(writeParameter(['k'.repeat(5000)]).length).toBe(101);
});
