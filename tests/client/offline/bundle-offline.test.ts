import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundleOffline, fileOf } from '../../../client/offline/bundle-offline.ts';

describe('bundleOffline', () => {
  let assets = '';
  const site = () => ({ assets, pages: ['/', '/counter'], kept: ['/counter', '/a.css'] });
  beforeAll(async () => {
    assets = await mkdtemp(join(tmpdir(), 'ragbloom-offline-'));
    await writeFile(join(assets, 'counter.html'), '<p>Counter</p>');
    await writeFile(join(assets, 'a.css'), 'p{color:red}');
  });
  afterAll(() => rm(assets, { recursive: true, force: true }));

  test('bundleOffline makes a script of at most 1.5 kB after gzip that knows its files', async () => {
    const { script, version } = await bundleOffline(site());
    expect(version).toMatch(/^[0-9a-f]{8}$/);
    for (const path of ['/counter', '/a.css', version]) expect(script).toContain(path);
    expect(gzipSync(script, { level: 9 }).length).toBeLessThanOrEqual(1500);
  });

  test('bundleOffline makes the same of the same files, and another version of another byte', async () => {
    const first = await bundleOffline(site());
    expect(await bundleOffline(site())).toEqual(first);
    await writeFile(join(assets, 'a.css'), 'p{color:tan}');
    expect((await bundleOffline(site())).version).not.toBe(first.version);
  });

  test('bundleOffline has no way to take over before its time', async () => {
    expect((await bundleOffline(site())).script).not.toContain('skipWaiting');
  });
});

describe('fileOf', () => {
  test('fileOf finds a page by its path', () => {
    expect(fileOf('/counter', ['/counter'])).toBe('counter.html');
    expect(fileOf('/embed/a.js', ['/counter'])).toBe('embed/a.js');
  });
});
