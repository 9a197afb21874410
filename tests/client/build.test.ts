import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findExcess } from '../../client/build/weigh-loads.ts';
import { buildSite, type Site } from '../../client/build.ts';
import { VERSION } from '../../client/embed/version.ts';

describe('buildSite', () => {
  let out = '';
  let site: Site;
  const read = (path: string) => readFile(join(out, 'assets', path), 'utf8');
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), 'ragbloom-build-'));
    await buildSite(out);
    await writeFile(join(out, 'assets', 'left-over.js'), '');
    site = await buildSite(out);
  }, 60_000);
  afterAll(() => rm(out, { recursive: true, force: true }));

  test('buildSite(out) writes the worker and tells its true size after gzip', async () => {
    const worker = await readFile(join(out, 'worker', 'worker.js'));
    expect(site.worker.gzip).toBe(gzipSync(worker, { level: 9 }).length);
    expect(site.worker.inputs).toContain('api/worker.ts');
  });

  test('buildSite(out) puts every script where the loader looks for it', async () => {
    const files = await readdir(join(out, 'assets', 'embed', VERSION));
    const loader = await read('embed/v1.js');
    const named = [...loader.matchAll(/"([\w-]+-[A-Z0-9]{8})"/g)].map(([, name]) => `${name}.js`);
    expect(named.length).toBeGreaterThan(4);
    expect(files).toEqual(expect.arrayContaining(named));
    expect(site.scripts.map(({ name }) => name)).toEqual(expect.arrayContaining(named));
  });

  test('buildSite(out) copies the pages, and has them fetch beforehand what their elements load', async () => {
    const page = await read('index.html');
    const links =
      /^ *<link rel="modulepreload"(?: fetchpriority="low")? href="\/embed\/[\d.]+\/[\w-]+\.js">\n/gm;
    expect(page.match(links)?.length).toBeGreaterThan(1);
    expect(page.replace(links, '')).toBe(await readFile('client/pages/index.html', 'utf8'));
  });

  test('buildSite(out) removes what an earlier build left', async () => {
    await expect(read('left-over.js')).rejects.toThrow('ENOENT');
  });

  test('all that a browser loads is within its budget', () => {
    expect(site.loads.length).toBeGreaterThan(10);
    expect(findExcess(site.loads)).toEqual([]);
  });
});
