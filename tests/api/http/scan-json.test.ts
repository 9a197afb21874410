import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scanJson } from '../../../api/http/scan-json.ts';

const scan = (text: string) => scanJson(text).map(({ code, path }) => `${code} ${path.join('/')}`);

test('scanJson finds a key given twice in one object, with its place', () => {
  expect(scan('{"a":1,"a":2}')).toEqual(['repeated-key a']);
  expect(scan('{"l":[{"x":1},{"x":1,"y":{"z":1 , "z":2}}]}')).toEqual(['repeated-key l/1/y/z']);
});

test('scanJson sees through escapes: "\\u0061" is "a"', () => {
  expect(scan('{"a":1,"\\u0061":2}')).toEqual(['repeated-key a']);
});

test('scanJson lets one key stand in several objects, and one text be key and value', () => {
  expect(scan('{"a":{"a":"a"},"b":["a","a",{"a":1}],"c":"{\\"a\\":1,\\"a\\":2}"}')).toEqual([]);
});

test('scanJson allows 12 levels and stops at the 13th', () => {
  expect(scan(`${'['.repeat(12)}${']'.repeat(12)}`)).toEqual([]);
  expect(scan(`${'['.repeat(13)}${']'.repeat(13)}`)).toEqual([
    `too-deep ${Array(12).fill(0).join('/')}`,
  ]);
});

test('scanJson of 10,000 brackets, or of 65,000 quotes, takes less time than a person can see', () => {
  const start = performance.now();
  expect(scan('['.repeat(10_000))[0]).toMatch(/^too-deep/);
  expect(scan('{"a":'.repeat(10_000))[0]).toMatch(/^too-deep/);
  expect(scan(`"${'\\"'.repeat(32_000)}`)).toEqual([]);
  expect(scan(`"${'\\"'.repeat(32_000)}\\`)).toEqual([]);
  expect(scan('"'.repeat(65_001))).toEqual([]);
  expect(performance.now() - start).toBeLessThan(1000);
});

test('scanJson tells at most 50 of many', () => {
  expect(scan(`{${'"a":1,'.repeat(5000)}"a":1}`)).toHaveLength(50);
});

test('scanJson finds nothing in any JSON that a serialiser writes', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 8 }), (text) => {
      expect(scanJson(text)).toEqual([]);
    }),
    { numRuns: 500 },
  );
});

test('scanJson takes any text at all without an exception', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[{}[\]",:\\a1 ]{0,60}$/), (text) => {
      expect(Array.isArray(scanJson(text))).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
