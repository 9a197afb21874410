import { expect, test } from 'vitest';
import { readPort } from '../../api/read-port.ts';

test('readPort takes 0 to 65535, and 8787 where nothing is said', () => {
  expect([readPort(), readPort('0'), readPort('65535')]).toEqual([8787, 0, 65_535]);
});

test('readPort refuses what is no port', () => {
  expect(['65536', '-1', '8.5', '', 'abc', '0x10'].map(readPort)).toEqual(
    Array.from({ length: 6 }),
  );
});
