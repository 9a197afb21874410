import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readText, root } from './source-tree.ts';

const compiler = join(root, 'node_modules', '.bin', 'tsc');
const settings = join(root, 'api', 'core', 'tsconfig.json');

/** Type-checks a project; the complaints, a line each, and none when all is well. */
async function typecheck(project: string): Promise<readonly string[]> {
  const run = promisify(execFile)(compiler, ['--project', project, '--pretty', 'false'], {
    cwd: root,
  });
  const { stdout } = await run.catch((error: unknown) => error as { readonly stdout: string });
  return stdout.split('\n').filter((line) => line.includes('error TS'));
}

/** What the core must not be able to name: of the browser, of Node, of the worker, of the clock on the wall. */
const FORBIDDEN: Readonly<Record<string, string>> = {
  document: 'export const a = document.title;',
  window: 'export const a = window.innerWidth;',
  fetch: "export const a = fetch('/v1/plan');",
  Request: "export const a = new Request('/');",
  URL: "export const a = new URL('https://example.test');",
  process: "export const a = process.env['HOME'];",
  Buffer: "export const a = Buffer.from('a');",
  node: "import { readFileSync } from 'node:fs';\nexport const a = readFileSync('a');",
  console: "console.log('a');",
  setTimeout: 'setTimeout(() => undefined, 1);',
  crypto: 'export const a = crypto.randomUUID();',
  performance: 'export const a = performance.now();',
};

describe('the core alone', () => {
  test('api/core type-checks with the library of the language alone', async () => {
    expect(JSON.parse(readText('api/core/tsconfig.json'))).toMatchObject({
      compilerOptions: { lib: ['ES2024'], types: [] },
      include: ['**/*.ts'],
    });
    expect(await typecheck(settings)).toEqual([]);
  });

  describe('a file that wants more', () => {
    let folder = '';
    let complaints: readonly string[] = [];
    beforeAll(async () => {
      await mkdir(join(root, '.build'), { recursive: true });
      folder = await mkdtemp(join(root, '.build', 'core-alone-'));
      const files = { ...FORBIDDEN, allowed: 'export const a = Math.max(1, 2);' };
      await Promise.all(
        Object.entries(files).map(([name, text]) => writeFile(join(folder, `${name}.ts`), text)),
      );
      const project = join(folder, 'tsconfig.json');
      await writeFile(project, JSON.stringify({ extends: settings, include: ['*.ts'] }));
      complaints = await typecheck(project);
    }, 60_000);
    afterAll(() => rm(folder, { recursive: true, force: true }));

    test.each(Object.keys(FORBIDDEN))('a core file that names %s does not compile', (name) => {
      expect(complaints.some((line) => line.includes(`${name}.ts`))).toBe(true);
    });

    test('a core file that keeps to the language compiles', () => {
      expect(complaints.filter((line) => line.includes('allowed.ts'))).toEqual([]);
    });
  });
});
