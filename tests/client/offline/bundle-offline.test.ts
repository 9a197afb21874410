import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { bundleOffline, pathOf } from '../../../client/offline/bundle-offline.ts';

const page = `<link rel="stylesheet" href="/look/a.css"><script src="/embed/v1.js"></script>
<script src="/offline.js" type="module"></script><a href="/wash">Wash</a><!--version-->`;
const assets = {
  'counter.html': page,
  'index.html': 'Plan',
  'wash.html': 'Wash',
  'look/a.css': 'p{color:red}',
  'embed/v1.js': '1',
  'embed/later-12345678.js': '2',
};
const keeping = { page: 'counter.html', lazy: ['embed/later-12345678.js'] };

const bundle = async (change = {}) => {
  const files = await bundleOffline({ ...assets, ...change }, keeping);
  const worker = `${files['service-worker.js']}`;
  return { files, worker, version: /[0-9a-f]{8}$/.exec(`${files['counter.html']}`)?.[0] ?? '' };
};

describe('bundleOffline', () => {
  test('bundleOffline makes a worker of at most 1.5 kB after gzip that knows what is kept', async () => {
    const { worker, version } = await bundle();
    expect(version).toMatch(/^[0-9a-f]{8}$/);
    expect(worker).toContain(version);
    const kept = ['/counter', '/look/a.css', '/embed/v1.js', '/offline.js'];
    expect(worker).toContain(JSON.stringify([...kept, '/embed/later-12345678.js']));
    expect(worker).toContain(JSON.stringify(['/counter', '/', '/wash']));
    expect(gzipSync(worker, { level: 9 }).length).toBeLessThanOrEqual(1500);
  });

  test('bundleOffline makes the same of the same files, and another version of another byte', async () => {
    const first = await bundle();
    expect(await bundle()).toEqual(first);
    expect((await bundle({ 'look/a.css': 'p{color:tan}' })).version).not.toBe(first.version);
    expect((await bundle({ 'wash.html': 'Washed' })).version).toBe(first.version);
  });

  test('bundleOffline has no way to take over before its time, and nothing to import', async () => {
    const { worker } = await bundle();
    expect(worker).not.toContain('skipWaiting');
    expect(worker).not.toMatch(/\b(import|export)\b/);
  });

  test('bundleOffline gives every page its script, and each language apart', async () => {
    const { files } = await bundle();
    expect(`${files['offline.js']}`).toContain('service-worker.js');
    const names = Object.keys(files);
    for (const language of ['es', 'de', 'fr']) {
      expect(names.some((name) => name.startsWith(`offline-${language}-`))).toBe(true);
    }
  });
});

describe('pathOf', () => {
  test('pathOf is how a browser asks for a file', () => {
    expect(['counter.html', 'index.html', 'a/b.js'].map(pathOf)).toEqual([
      '/counter',
      '/',
      '/a/b.js',
    ]);
  });
});
