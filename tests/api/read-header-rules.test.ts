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

test('chooseHeaders takes every rule that fits', () => {
  const rules = readHeaderRules(text);
  expect(chooseHeaders(rules, '/a.js').map(([name]) => name)).toEqual(['X-All', 'X-Own']);
  expect(chooseHeaders(rules, '/b.js').map(([name]) => name)).toEqual(['X-All']);
});
