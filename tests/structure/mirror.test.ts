import { describe, expect, test } from 'vitest';
import { EXEMPT, findTestPath, isTypesOnly, judgeMirror } from './mirror-rules.ts';
import { listFiles, readText } from './source-tree.ts';

const sources = listFiles('api/**/*.ts', 'client/**/*.ts');
const tests = listFiles('tests/**/*.test.ts');

describe('the mirror', () => {
  test('every source has its test at the mirrored path, and every mirrored test its source', () => {
    expect(judgeMirror(sources, tests, EXEMPT)).toEqual([]);
  });

  test('every source that is exempt for holding types only holds nothing else', () => {
    const typed = Object.keys(EXEMPT).filter((file) => EXEMPT[file] === 'types only');
    expect(typed.filter((file) => !isTypesOnly(readText(file)))).toEqual([]);
  });
});

describe('judgeMirror', () => {
  test('judgeMirror refuses a source without a test', () => {
    expect(judgeMirror(['api/http/etag.ts'], [], {})).toEqual([
      'api/http/etag.ts has no tests/api/http/etag.test.ts.',
    ]);
  });

  test('judgeMirror refuses a test at another path', () => {
    const found = judgeMirror(['api/core/a/b.ts'], ['tests/core/b.test.ts'], {});
    expect(found).toEqual([
      'api/core/a/b.ts has no tests/core/a/b.test.ts.',
      'tests/core/b.test.ts tests no source at its mirrored path.',
    ]);
  });

  test('judgeMirror takes a test in the browser for a test', () => {
    expect(judgeMirror(['client/a.ts'], ['tests/client/a.browser.test.ts'], {})).toEqual([]);
  });

  test('judgeMirror lets tests across rooms stand elsewhere', () => {
    expect(judgeMirror([], ['tests/contract/same-rows.test.ts'], {})).toEqual([]);
  });

  test('judgeMirror refuses an exemption of what is tested or gone', () => {
    const tested = judgeMirror(['client/a.ts'], ['tests/client/a.test.ts'], { 'client/a.ts': '' });
    expect(tested).toEqual(['client/a.ts needs no exemption.']);
    expect(judgeMirror([], [], { 'client/b.ts': '' })).toEqual(['client/b.ts needs no exemption.']);
  });
});

describe('findTestPath', () => {
  test('findTestPath leaves out api/ for the core alone', () => {
    expect(findTestPath('api/core/cloth/cut-strips.ts')).toBe('tests/core/cloth/cut-strips');
    expect(findTestPath('api/http/etag.ts')).toBe('tests/api/http/etag');
  });

  test('findTestPath has the languages of a group tested where their source is', () => {
    for (const name of ['source', 'en', 'de']) {
      expect(findTestPath(`client/text/plan/${name}.ts`)).toBe('tests/client/text/plan/source');
    }
    expect(findTestPath('client/text/languages.ts')).toBe('tests/client/text/languages');
  });
});

describe('isTypesOnly', () => {
  test('isTypesOnly refuses a file with a value', () => {
    expect(isTypesOnly('export interface A { b: number }')).toBe(true);
    expect(isTypesOnly('export type A = 1;\nexport const b = 2;')).toBe(false);
    expect(isTypesOnly("import './b.ts';")).toBe(false);
  });
});
