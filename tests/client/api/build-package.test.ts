import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { buildPackage } from '../../../client/api/build-package.ts';
import { ELEMENTS } from '../../../client/build/budgets.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const run = promisify(execFile);
const bin = (name: string) => join(root, 'node_modules', '.bin', name);

/** A folder of somebody who installed the package. */
let home = '';
let packed = '';

beforeAll(async () => {
  await buildPackage('.build/package');
  home = await mkdtemp(join(tmpdir(), 'ragbloom-'));
  await run('npm', ['pack', '--ignore-scripts', '--pack-destination', home], { cwd: root });
  const [file = ''] = (await readdir(home)).filter((name) => name.endsWith('.tgz'));
  packed = join(home, file);
  const folder = join(home, 'node_modules', 'ragbloom');
  await mkdir(folder, { recursive: true });
  await run('tar', ['xzf', packed, '-C', folder, '--strip-components=1']);
  for (const name of [
    'lit',
    'lit-html',
    'lit-element',
    '@lit',
    '@lit-labs',
    '@types/trusted-types',
  ]) {
    await mkdir(join(home, 'node_modules', '@types'), { recursive: true });
    await symlink(join(root, 'node_modules', name), join(home, 'node_modules', name));
  }
  await writeFile(join(home, 'package.json'), '{"type":"module"}');
}, 60_000);

afterAll(() => rm(home, { recursive: true, force: true }));

describe('buildPackage makes a package', () => {
  test('that a linter of packages has nothing to say about', async () => {
    const { stdout } = await run(bin('publint'), ['--strict', '--pack', 'false', root]);
    expect(stdout).toContain('All good!');
  }, 60_000);

  test('whose types every way of resolving modules finds', async () => {
    const { stdout } = await run(bin('attw'), [
      packed,
      '--profile',
      'esm-only',
      '--format',
      'json',
    ]);
    const { analysis } = JSON.parse(stdout) as {
      analysis: { problems: { resolutionKind: string }[] };
    };
    const old = ['node10', 'node16-cjs'];
    expect(analysis.problems.filter((one) => !old.includes(one.resolutionKind))).toEqual([]);
  }, 60_000);

  test('whose core plans to the byte as the service does', async () => {
    const script = `
      import { planQuilt, resolvePlan } from 'ragbloom/core';
      const resolved = resolvePlan({ target: { width: 40, height: 50 } });
      process.stdout.write(JSON.stringify(planQuilt(resolved.value)));`;
    await writeFile(join(home, 'plan.js'), script);
    const { stdout } = await run(process.execPath, ['plan.js'], { cwd: home });
    const answer = await app.request('/v1/plan?target.width=40&target.height=50');
    expect(stdout === (await answer.text())).toBe(true);
  });

  test('whose client holds no server and no schema library', async () => {
    const script = `
      import { makeClient, ProblemError } from 'ragbloom/client';
      const fetch = async () => Response.json({ detail: 'No.', status: 422, errors: [] },
        { status: 422, headers: { 'Content-Type': 'application/problem+json' } });
      const client = makeClient({ origin: 'http://x', fetch });
      await client.ask('/v1/plan', { target: { size: 'throw' } }).catch((error) => {
        process.stdout.write(String(error instanceof ProblemError));
      });`;
    await writeFile(join(home, 'ask.js'), script);
    expect((await run(process.execPath, ['ask.js'], { cwd: home })).stdout).toBe('true');
    const file = join(home, 'node_modules/ragbloom/.build/package/client.js');
    const text = await readFile(file, 'utf8');
    expect(text).not.toMatch(/^import |zod|hono/m);
    expect(text.length).toBeLessThan(10_000);
  });

  test.each(Object.keys(ELEMENTS))(
    'whose %s can be imported where there is no page, registered or not',
    async (name) => {
      const script = `
        const tag = 'ragbloom-${name}';
        const known = () => globalThis.customElements?.get(tag) !== undefined;
        const { default: none, ...held } = await import('ragbloom/elements/${name}/class');
        const [title] = Object.keys(held).filter((key) => key.endsWith('Element'));
        const before = known();
        await import('ragbloom/elements/${name}');
        process.stdout.write(JSON.stringify([title, before, typeof held[title].properties]));`;
      await writeFile(join(home, 'element.js'), script);
      const { stdout, stderr } = await run(process.execPath, ['element.js'], { cwd: home });
      const title = `${name.charAt(0).toUpperCase()}${name.slice(1)}Element`;
      expect(JSON.parse(stdout)).toEqual([title, false, 'object']);
      expect(stderr).toBe('');
    },
  );

  test('whose elements hold neither Lit nor each other', async () => {
    const folder = join(home, 'node_modules/ragbloom/.build/package');
    for (const name of Object.keys(ELEMENTS)) {
      const text = await readFile(join(folder, 'elements', `${name}.js`), 'utf8');
      expect(text.length).toBeLessThan(2000);
    }
    const parts = await readdir(join(folder, 'parts'));
    const texts = parts.map((part) => readFile(join(folder, 'parts', part), 'utf8'));
    const all = (await Promise.all(texts)).join('\n');
    expect(all).not.toMatch(/\/\/ node_modules\/(lit|@lit)/);
    expect(all).toMatch(/from "lit"/);
    expect(
      all.match(/^var PlanElement = class|^ {2}PlanElement = class|class _?PlanElement /gm),
    ).toHaveLength(1);
  });

  test('whose elements a tag and its properties have a type for', async () => {
    const check = (code: string) => checkTypes(`import 'ragbloom/elements/plan';\n${code}`);
    const make = "const plan = document.createElement('ragbloom-plan');\n";
    expect(await check(`${make}plan.preset = 'target.size=lap';`)).toBe('');
    expect(await check(`${make}plan.prest = 'target.size=lap';`)).toContain('prest');
  }, 60_000);

  test('whose types tell right from wrong', async () => {
    const check = (code: string) =>
      checkTypes(`import { makeClient } from 'ragbloom/client';\n${code}`);
    const ask = "const plan = await makeClient({ origin: 'http://x' }).ask('/v1/plan', ";
    expect(await check(`${ask}{ target: { size: 'throw' } });\nplan.grid.blocks.toFixed();`)).toBe(
      '',
    );
    expect(await check(`${ask}{ target: { size: 'enormous' } });`)).toContain('enormous');
    expect(await check(`${ask}{ target: { size: 'throw' } });\nplan.grid.bricks;`)).toContain(
      'bricks',
    );
  }, 60_000);
});

/** What the compiler has against code of somebody who installed the package. */
async function checkTypes(code: string): Promise<string> {
  await writeFile(join(home, 'use.ts'), code);
  const compiler = join(root, 'node_modules/typescript/bin/tsc');
  const options = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2022'];
  const libraries = ['--lib', 'es2024,dom,dom.iterable', '--skipLibCheck', '--types', ''];
  const asked = [compiler, ...options, ...libraries, 'use.ts'];
  return run(process.execPath, asked, { cwd: home }).then(
    () => '',
    ({ stdout }: { stdout: string }) => stdout,
  );
}
