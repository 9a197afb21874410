import { describe, expect, test } from 'vitest';
import { DEFAULT_EXPORTS, judgeFileName, judgeManners, LONG_FILES } from './manners-rules.ts';
import { listFiles, readText } from './source-tree.ts';

const files = listFiles('{api,client,tests,demo-data}/**/*.ts');

describe('the manners of the house', () => {
  test('every file keeps them', () => {
    expect(files.flatMap((file) => judgeManners(file, readText(file)))).toEqual([]);
  });

  test('every file has a name that says what is in it', () => {
    expect(files.flatMap(judgeFileName)).toEqual([]);
  });

  test('every exception is still there and still needed', () => {
    expect(DEFAULT_EXPORTS.filter((file) => !/export default/.test(readText(file)))).toEqual([]);
    const long = Object.keys(LONG_FILES).filter((file) => !files.includes(file));
    expect(long).toEqual([]);
  });

  test('nothing stands at the top of the project that does not belong there', () => {
    const named = [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'package-lock.json',
      'package.json',
      'tsconfig.json',
      'wrangler.toml',
    ];
    expect(listFiles('*').filter((file) => !file.startsWith('.'))).toEqual(named);
  });
});

const lines = (count: number) => 'const a = 1;\n'.repeat(count);

/** Each a file and a text that the rules must refuse; the words in halves, so that this file passes. */
const REFUSED: readonly (readonly [file: string, text: string])[] = [
  ['api/core/plan.ts', 'export default 1;'],
  ['api/core/plan.ts', lines(251)],
  ['tests/core/plan.test.ts', lines(401)],
  ['api/core/plan.ts', `// ${'TO'}${'DO'} later`],
  ['api/core/plan.ts', `// @ts-${'ignore'}\nexport const a = 1;`],
  ['api/core/plan.ts', `// biome-${'ignore'} lint: no`],
  ['api/http/answer.ts', 'export const a = b as any;'],
  ['api/http/answer.ts', 'export const a = b!;'],
  ['api/core/plan.ts', 'export enum A { B }'],
  ['api/core/plan.ts', 'export class A {}'],
  ['api/core/plan.ts', 'export const a = Math.random();'],
  ['api/core/plan.ts', 'export const a = Date.now();'],
  ['api/core/plan.ts', 'export const a = new Date();'],
  ['tests/core/plan.test.ts', "test.skip('a', () => {});"],
  ['tests/core/plan.test.ts', "describe.only('a', () => {});"],
  ['tests/core/plan.test.ts', "test.todo('a');"],
  ['tests/core/plan.test.ts', "test.skipIf(true)('a', () => {});"],
  ['tests/core/plan.test.ts', "test.concurrent.only('a', () => {});"],
  ['client/elements/plan/plan-styles.ts', 'export const a = css`p { margin: 1.5rem }`;'],
];

describe('judgeManners', () => {
  test.each(REFUSED)('judgeManners(%j, %j) refuses', (file, text) => {
    expect(judgeManners(file, text)).not.toEqual([]);
  });

  test('judgeManners lets chance into what is not core', () => {
    expect(judgeManners('client/build.ts', 'export const a = Math.random();')).toEqual([]);
  });

  test('judgeManners refuses rem and nothing else that ends alike', () => {
    const text = 'export const a = css`p { margin: 0.5em; content: "theorem" }`;';
    expect(judgeManners('client/look/tokens.ts', text)).toEqual([]);
  });

  test('judgeManners lets a file be as long as it may', () => {
    expect(judgeManners('api/core/plan.ts', lines(250))).toEqual([]);
  });
});

describe('judgeFileName', () => {
  test.each([
    'api/core/utils.ts',
    'api/core/cloth-helpers.ts',
    'api/core/common.ts',
    'api/core/cutStrips.ts',
  ])('judgeFileName(%j) refuses', (file) => {
    expect(judgeFileName(file)).not.toEqual([]);
  });

  test('judgeFileName takes a test in the browser', () => {
    expect(judgeFileName('tests/client/plan-element.browser.test.ts')).toEqual([]);
  });
});
