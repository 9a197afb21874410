import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { cp, mkdir, mkdtemp, readFile, rm, symlink } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type NodeServer, startNode } from '../../api/node.ts';
import { root } from '../structure/source-tree.ts';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();
let node: NodeServer;

beforeAll(async () => {
  node = await startNode({ assets: worker.assets(), port: 0, host: '127.0.0.1' });
}, 60_000);
afterAll(() => node.stop());

const headers = { 'Content-Type': 'application/json' };
const wish = JSON.stringify({ target: { width: 40, height: 50 } });
const query = 'target.width=40&target.height=50';

/** Each a way to ask; the answer must be that of the worker in every respect that matters. */
const rows: readonly [name: string, path: string, init?: RequestInit][] = [
  ['a plan', `/v1/plan?${query}`],
  ['a plan by another spelling', `/v1/plan?target.height=50.0&target.width=40`],
  ['a plan as a picture', `/v1/plan.svg?${query}`],
  ['a plan by POST', '/v1/plan', { method: 'POST', headers, body: wish }],
  ['a plan by QUERY', '/v1/plan', { method: 'QUERY', headers, body: wish }],
  ['HEAD', `/v1/plan?${query}`, { method: 'HEAD' }],
  ['OPTIONS', '/v1/plan', { method: 'OPTIONS' }],
  ['a method that is not taken', '/v1/plan', { method: 'DELETE' }],
  ['a batch', '/v1/batch', { method: 'POST', headers, body: '{"requests":[]}' }],
  ['faults', '/v1/plan?spare=300&none=1'],
  ['a body that is no JSON', '/v1/plan', { method: 'POST', headers, body: '{' }],
  ['a body of another kind', '/v1/plan', { method: 'POST', body: 'a=1' }],
  ['a body too large', '/v1/plan', { method: 'POST', headers, body: ' '.repeat(70_000) }],
  ['nothing', '/none'],
  ['a page of a problem', '/problems/missing'],
  ['health', '/health'],
  ['the description', '/openapi.json'],
  ['the page', '/'],
  ['the page with a result in it', `/?${query}`],
  ['the page with faults in it', '/?target.width=x&target.height=50'],
  ['a frame', `/embed/size?${query}&_lang=de`],
  ['a frame with faults', '/embed/plan?_lang=it'],
  ['a frame of nothing', '/embed/nothing'],
  ['the maker of snippets', '/embed'],
  ['the script of the elements', '/embed/v1.js'],
  ['the script of one version of them', '/embed/1.0.0/embed.js'],
  ['what the bytes of its files come to', '/embed/manifest.json'],
  ['a file that is not there', '/embed/1.0.0/none.js'],
];
const COMPARED = [
  ...['content-type', 'cache-control', 'content-location', 'allow', 'content-security-policy'],
  ...['access-control-allow-origin', 'cross-origin-resource-policy', 'x-content-type-options'],
];

describe('startNode answers as the worker does', () => {
  test.each(rows)('%s', async (_, path, init) => {
    const [here, there] = await Promise.all([
      fetch(`${node.origin}${path}`, init),
      fetch(`${worker.origin()}${path}`, init),
    ]);
    const told = (text: string, origin: string) =>
      text.replaceAll(origin, '').replaceAll(encodeURIComponent(origin), '');
    const pick = ({ headers: own }: Response, origin: string) =>
      COMPARED.map((name) => [name, told(own.get(name) ?? '', origin)]);
    expect(here.status).toBe(there.status);
    expect(pick(here, node.origin)).toEqual(pick(there, worker.origin()));
    const [mine, theirs] = [await here.text(), await there.text()];
    expect(told(mine, node.origin) === told(theirs, worker.origin())).toBe(true);
  });

  test('304 without a body', async () => {
    const tag = (await fetch(`${node.origin}/v1/plan?${query}`)).headers.get('etag') ?? '';
    const held = { headers: { 'If-None-Match': tag } };
    const answer = await fetch(`${node.origin}/v1/plan?${query}`, held);
    expect([answer.status, await answer.text()]).toEqual([304, '']);
  });

  test.each(['/../package.json', '/%2e%2e/package.json', '/..%5cpackage.json'])(
    'nothing outside its pages: %s',
    async (path) => {
      const { port } = new URL(node.origin);
      const status = await new Promise((resolve, reject) => {
        request({ port, path, host: '127.0.0.1' }, (answer) => {
          answer.resume();
          resolve(answer.statusCode);
        })
          .on('error', reject)
          .end();
      });
      expect(status).toBe(404);
    },
  );
});

describe('api/Containerfile', () => {
  const lines = async () =>
    (await readFile(new URL('../../api/Containerfile', import.meta.url), 'utf8'))
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'));

  test('has nothing but instructions, each image by its version, and runs as nobody special', async () => {
    const known = /^(FROM|WORKDIR|COPY|RUN|ENV|USER|EXPOSE|HEALTHCHECK|CMD) \S/;
    const found = await lines();
    expect(found.filter((line) => !known.test(line))).toEqual([]);
    for (const line of found.filter((one) => one.startsWith('FROM'))) {
      expect(line).toMatch(/^FROM \S+:\d+\.\d+\.\d+-slim( AS build)?$/);
    }
    expect(found.indexOf('USER node')).toBeGreaterThan(0);
    expect(found.at(-1)).toBe('CMD ["node", "api/node.ts"]');
  });

  test('copies only what is there', async () => {
    const copied = (await lines())
      .filter((line) => line.startsWith('COPY') && !line.includes('--from'))
      .flatMap((line) => line.split(' ').slice(1, -1));
    expect(copied.length).toBeGreaterThan(3);
    expect(copied.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  test('needs no more than it copies and the packages of production', async () => {
    const home = await mkdtemp(join(tmpdir(), 'ragbloom-'));
    try {
      for (const part of ['package.json', 'api'])
        await cp(join(root, part), join(home, part), { recursive: true });
      await cp(worker.assets(), join(home, '.build/assets'), { recursive: true });
      await mkdir(join(home, 'node_modules'));
      for (const name of ['hono', 'zod', '@hono']) {
        await symlink(join(root, 'node_modules', name), join(home, 'node_modules', name));
      }
      const env = { ...process.env, PORT: '0' };
      const child = spawn(process.execPath, ['api/node.ts'], { cwd: home, env });
      const [told] = (await once(child.stdout, 'data')) as [Buffer];
      const [origin = ''] = /http:\S+/.exec(String(told)) ?? [];
      const health = await fetch(`${origin}/health`);
      child.kill('SIGTERM');
      const [code] = (await once(child, 'close')) as [number];
      expect([health.status, code]).toEqual([200, 0]);
    } finally {
      await rm(home, { recursive: true, force: true });
    }
  }, 30_000);
});
