import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type FileServer, loadFiles } from '../../api/load-files.ts';

let folder = '';
let serve: FileServer;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ragbloom-'));
  await mkdir(join(folder, 'site', 'look'), { recursive: true });
  await writeFile(join(folder, 'secret.txt'), 'secret');
  const write = (name: string, text: string) => writeFile(join(folder, 'site', name), text);
  await write('_headers', '/*\n  X-All: 1\n');
  await write('index.html', 'home');
  await write('wash.html', 'wash');
  await write('look/page.css', 'css');
  serve = await loadFiles(join(folder, 'site'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const ask = (path: string, init?: RequestInit) => serve(new Request(`http://x${path}`, init));

test.each([
  ['/', 'home', 'text/html; charset=utf-8'],
  ['/index.html', 'home', 'text/html; charset=utf-8'],
  ['/wash?a=1', 'wash', 'text/html; charset=utf-8'],
  ['/look/page.css', 'css', 'text/css; charset=utf-8'],
])('loadFiles serves %s', async (path, text, type) => {
  const answer = await ask(path);
  expect(await answer.text()).toBe(text);
  expect(answer.headers.get('content-type')).toBe(type);
  expect(answer.headers.get('x-all')).toBe('1');
});

test.each([
  '/none',
  '/_headers',
  '/../secret.txt',
  '/%2e%2e/secret.txt',
  '/look',
  '/..%2fsecret.txt',
])('loadFiles finds nothing at %s', async (path) => {
  expect((await ask(path)).status).toBe(404);
});

test('loadFiles answers 304 to whoever holds the bytes, and HEAD without them', async () => {
  const tag = (await ask('/')).headers.get('etag') ?? '';
  expect((await ask('/', { headers: { 'If-None-Match': tag } })).status).toBe(304);
  const head = await ask('/', { method: 'HEAD' });
  expect([head.status, head.body]).toEqual([200, null]);
});
