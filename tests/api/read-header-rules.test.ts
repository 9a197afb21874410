import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { chooseHeaders, readHeaderRules } from '../../api/read-header-rules.ts';

const text = '# why\n/*\n  X-All: 1\n\n/a.js\n  X-Own: two: parts \n';

describe('readHeaderRules', () => {
  test('reads patterns and the headers below them', () => {
    expect(readHeaderRules(text)).toEqual([
      { pattern: '/*', headers: [['X-All', '1']] },
      { pattern: '/a.js', headers: [['X-Own', 'two: parts']] },
    ]);
  });
  test.each(['  X-Lost: 1\n', '/*\nX-A: 1\n', '/*\n  no header\n'])('refuses %j', (slip) => {
    expect(() => readHeaderRules(slip)).toThrow('neither path nor header');
  });
  test('reads the file of the project', () => {
    const file = new URL('../../client/pages/_headers', import.meta.url);
    expect(readHeaderRules(readFileSync(file, 'utf8')).length).toBeGreaterThan(1);
  });
});

test.each([
  ['/embed/1.0.0/a.js', true],
  ['/embed/1.0.0/a/b.js', true],
  ['/embed/v1.js', false],
  ['/x/embed/1.0.0/a.js', false],
])('chooseHeaders lets a name stand for one part of a path: %s', (path, isFit) => {
  const rules = readHeaderRules('/embed/:version/*\n  X-Kept: 1\n');
  expect(chooseHeaders(rules, path)).toHaveLength(isFit ? 1 : 0);
});

test('chooseHeaders takes a point for a point', () => {
  expect(chooseHeaders(readHeaderRules('/a.js\n  X-A: 1\n'), '/abjs')).toEqual([]);
});

test('chooseHeaders takes every rule that fits', () => {
  const rules = readHeaderRules(text);
  expect(chooseHeaders(rules, '/a.js').map(([name]) => name)).toEqual(['X-All', 'X-Own']);
  expect(chooseHeaders(rules, '/b.js').map(([name]) => name)).toEqual(['X-All']);
});
