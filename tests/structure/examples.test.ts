import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { resolve } from './import-rules.ts';
import { parseModule } from './parse-module.ts';
import { readExample, readExamples } from './read-examples.ts';
import { agrees, runClaim, type Scope } from './run-claim.ts';
import { listFiles, readText, root } from './source-tree.ts';

const files = listFiles('api/**/*.ts', 'client/**/*.ts').filter((file) =>
  readText(file).includes('@example'),
);

/** All that a file exports and all that the files it imports export. */
async function openScope(file: string): Promise<Scope> {
  const imported = parseModule(readText(file))
    .imports.filter(({ specifier, isType }) => !isType && /^[.#]/.test(specifier))
    .map(({ specifier }) => resolve(file, specifier));
  const modules = await Promise.all([...imported, file].map((path) => import(join(root, path))));
  return Object.assign({}, ...modules) as Scope;
}

describe('the examples of the docblocks', () => {
  test.each(files)('%s: what its examples say holds', async (file) => {
    const scope = await openScope(file);
    const claims = readExamples(readText(file)).flatMap((example) => example.claims);
    const wrong = await Promise.all(claims.map((claim) => runClaim(claim, scope)));
    expect(wrong.filter((sentence) => sentence !== undefined)).toEqual([]);
  });

  test.each(files)('%s: every example says what comes out', (file) => {
    const examples = readExamples(readText(file));
    expect(examples.length).toBe(readText(file).match(/@example/g)?.length);
    expect(examples.filter(({ claims }) => claims.length === 0)).toEqual([]);
  });

  test('nearly every room has examples to run', () => {
    expect(files.length).toBeGreaterThan(40);
  });

  test('every function that a file exports is explained above it', () => {
    const bare = listFiles('api/**/*.ts', 'client/**/*.ts').flatMap((file) =>
      findBareFunctions(readText(file)).map((name) => `${file}: ${name}`),
    );
    expect(bare).toEqual([]);
  });
});

/** Names of exported functions with no docblock right above. */
function findBareFunctions(text: string): readonly string[] {
  const found = text.matchAll(/(?<before>\*\/\n|\n|^)export (?:async )?function (?<name>\w+)/g);
  return [...found].flatMap(({ groups }) =>
    groups?.['before']?.startsWith('*/') ? [] : [groups?.['name'] ?? ''],
  );
}

describe('findBareFunctions', () => {
  test('findBareFunctions refuses a function without a docblock', () => {
    expect(findBareFunctions('/** What. */\nexport function a() {}')).toEqual([]);
    expect(findBareFunctions('const b = 1;\nexport function a() {}')).toEqual(['a']);
    expect(findBareFunctions('export async function a() {}')).toEqual(['a']);
  });
});

describe('readExamples', () => {
  const block = (text: string) => `/**\n * What.\n *\n${text}\n */\nexport const a = 1;`;

  test('readExamples reads each claim of each example, and stops at the next tag', () => {
    const text = ' * @example\n * a(1) // => 2\n * a(2) // => 3\n * @returns b // => 4';
    const [example] = readExamples(block(text));
    expect(example?.claims.map(({ expression }) => expression)).toEqual(['a(1)', 'a(2)']);
    expect(example?.claims.map(({ expected }) => expected)).toEqual(['2', '3']);
  });

  test('readExamples finds an example that claims nothing', () => {
    expect(readExamples(block(' * @example\n * a(1)'))).toEqual([{ text: 'a(1)', claims: [] }]);
  });

  test('readExample keeps statements apart from what they lead to', () => {
    expect(readExample('\nconst b = 1; b + 1 // => 2').claims).toEqual([
      { setup: '\nconst b = 1; ', expression: 'b + 1', expected: '2' },
    ]);
    expect(readExample('const b = 1;\nsum(\n  b,\n) // => 1').claims).toEqual([
      { setup: 'const b = 1;\n', expression: 'sum(\n  b,\n)', expected: '1' },
    ]);
  });
});

describe('runClaim', () => {
  const claim = (expression: string, expected: string) => ({ setup: '', expression, expected });
  const scope = { double: (value: number) => 2 * value };

  test('runClaim is silent when a claim holds', async () => {
    expect(await runClaim(claim('double(2)', '4'), scope)).toBeUndefined();
  });

  test.each([
    ['double(2)', '5'],
    ['double(2)', "'4'"],
    ['triple(2)', '6'],
    ['double(', '6'],
    ['({ a: 1, b: 2 })', '{ a: 1 }'],
    ['[1, 2]', '[1]'],
  ])('runClaim tells that %s is not %s', async (expression, expected) => {
    expect(await runClaim(claim(expression, expected), scope)).toBeTypeOf('string');
  });
});

describe('agrees', () => {
  test('agrees takes a number to the digits printed, and no fewer', () => {
    expect(agrees(0.1 + 0.2, 0.3)).toBe(true);
    expect(agrees(0.682689492137086, 0.682689492137)).toBe(true);
    expect(agrees(0.682689493, 0.682689492137)).toBe(false);
    expect(agrees(215.93, 215.9)).toBe(false);
    expect(agrees(3.4, 3)).toBe(false);
    expect(agrees(Number.NaN, 1)).toBe(false);
  });
});
