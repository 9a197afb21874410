import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Bundle, budget, buildSite, findExcess } from '../../client/build.ts';

describe('buildSite', () => {
  let out = '';
  let bundles: readonly Bundle[] = [];
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), 'ragbloom-build-'));
    await buildSite(out);
    await writeFile(join(out, 'assets', 'left-over.js'), '');
    bundles = await buildSite(out);
  }, 60_000);
  afterAll(() => rm(out, { recursive: true, force: true }));

  test('buildSite(out) writes the worker and tells its true size after gzip', async () => {
    const worker = await readFile(join(out, 'worker', 'worker.js'));
    const told = bundles.find(({ name }) => name === 'worker.js');
    expect(told?.gzip).toBe(gzipSync(worker, { level: 9 }).length);
  });

  test('buildSite(out) lists what went into the worker', () => {
    const told = bundles.find(({ name }) => name === 'worker.js');
    expect(Object.keys(told?.meta.inputs ?? {})).toContain('api/worker.ts');
  });

  test('buildSite(out) copies the pages as they are', async () => {
    const page = await readFile(join(out, 'assets', 'index.html'), 'utf8');
    expect(page).toBe(await readFile('client/pages/index.html', 'utf8'));
  });

  test('buildSite(out) removes what an earlier build left', async () => {
    await expect(readFile(join(out, 'assets', 'left-over.js'))).rejects.toThrow('ENOENT');
  });

  test('every bundle that a browser loads is within its budget', () => {
    expect(findExcess(bundles)).toEqual([]);
  });
});

describe('findExcess', () => {
  test('findExcess gives nothing at the budget exactly', () => {
    expect(findExcess([{ name: 'embed.js', gzip: budget['embed.js'] ?? 0 }])).toEqual([]);
  });

  test('findExcess says by how much a bundle is over', () => {
    expect(findExcess([{ name: 'a.js', gzip: 1010 }], { 'a.js': 1000 })).toEqual([
      'a.js is 1010 bytes after gzip, 10 more than its budget of 1000.',
    ]);
  });
});
