/**
 * What serving costs on the worker runtime: requests a second of each endpoint beside the bare runtime
 * with a fixed answer and beside validation alone, in interleaved rounds over one load generator.
 * Medians, ratios, p99, bundle size and cold start are printed; nothing depends on them.
 */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { Miniflare } from 'miniflare';
import { app, ENDPOINTS } from '../../api/app.ts';
import { ENDPOINT_WORDS } from '../../api/docs/endpoint-words.ts';
import { buildSite } from '../../client/build.ts';
import { type Load, type LoadResult, sendLoad } from './send-load.ts';

const ROUNDS = Number(process.env['ROUNDS'] ?? 5);
const COUNT = Number(process.env['COUNT'] ?? 600);
const CONNECTIONS = 8;
const STARTS = 9;
const SMALLEST = '/v1/plan?target.columns=1&target.rows=1&block.cut=8';
const PLAN = '/v1/plan?target.width=40&target.height=50';

/** Another cut of the same quilt each time, so that nothing of it was asked before. */
let asked = 0;
const anew = () => {
  asked += 1;
  return SMALLEST.replace('cut=8', `cut=8.${String(asked).padStart(6, '0')}1`);
};

interface Lane {
  readonly name: string;
  readonly load: Pick<Load, 'port' | 'path' | 'headers' | 'method' | 'body'>;
  readonly status: string;
}

const folder = await mkdtemp(join(tmpdir(), 'ragbloom-'));
const started: Miniflare[] = [];
try {
  await run();
} finally {
  await Promise.all(started.map((server) => server.dispose()));
  await rm(folder, { recursive: true, force: true });
}

async function run(): Promise<void> {
  await buildSite(folder);
  const ours = await readFile(join(folder, 'worker/worker.js'), 'utf8');
  const smallest = await (await app.request(SMALLEST)).text();
  const bare = `const body = ${JSON.stringify(smallest)}; const headers = { 'Content-Type': 'application/json' };
    export default { fetch: () => new Response(body, { headers }) };`;
  const cold = await timeStarts([bare, ours]);
  const lanes = await makeLanes({
    bare,
    ours,
    validating: await bundle(
      "import { fetch } from './validate-only.ts'; export default { fetch };",
    ),
    forgetful: await bundle("import { app } from '../../api/app.ts'; export default app;"),
  });
  const found = new Map<string, LoadResult[]>(lanes.map(({ name }) => [name, []]));
  for (const lane of lanes) await send(lane, COUNT / 2);
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const lane of lanes) found.get(lane.name)?.push(await send(lane, COUNT));
  }
  print(found);
  console.log(`worker bundle ${gzipSync(ours, { level: 9 }).length} bytes after gzip`);
  console.log(
    `cold start, bare worker and ours: ${cold.map((ms) => ms.toFixed(0)).join(' and ')} ms`,
  );
}

async function makeLanes(scripts: {
  readonly bare: string;
  readonly ours: string;
  readonly validating: string;
  /** Ours without its memory of answers, so that each request goes the whole way. */
  readonly forgetful: string;
}): Promise<readonly Lane[]> {
  const [bare, ours, validating, forgetful] = await Promise.all([
    start(scripts.bare),
    start(scripts.ours),
    start(scripts.validating),
    start(scripts.forgetful),
  ]);
  const etag = (await app.request(SMALLEST)).headers.get('ETag') ?? '';
  const held = { 'If-None-Match': etag };
  const others = await Promise.all(ENDPOINTS.map(({ path }) => findAddress(path)));
  return [
    { name: 'bare runtime, a fixed answer', load: { port: bare, path: '/' }, status: '200' },
    { name: 'validation alone', load: { port: validating, path: PLAN }, status: '200' },
    { name: 'the smallest plan, asked anew', load: { port: ours, path: anew }, status: '200' },
    { name: 'the smallest plan, again', load: { port: ours, path: SMALLEST }, status: '200' },
    {
      name: '304 of one asked anew',
      load: { port: ours, path: anew, headers: { 'If-None-Match': '*' } },
      status: '304',
    },
    {
      name: '304 of one asked again',
      load: { port: ours, path: SMALLEST, headers: held },
      status: '304',
    },
    ...[PLAN, ...others].map((path, at) => ({
      name: `${at === 0 ? 'a throw' : `example of ${path.split('?')[0]}`}, asked anew`,
      load: { port: forgetful, path },
      status: '200',
    })),
  ];
}

/** The canonical address of the first example of an endpoint. */
async function findAddress(path: string): Promise<string> {
  const [example] = Object.values(ENDPOINT_WORDS[path]?.examples ?? {});
  const headers = { 'Content-Type': 'application/json' };
  const body = JSON.stringify(example?.input);
  const answer = await app.request(path, { method: 'POST', headers, body });
  return answer.headers.get('Content-Location') ?? path;
}

async function bundle(contents: string): Promise<string> {
  const resolveDir = fileURLToPath(new URL('.', import.meta.url));
  const { outputFiles } = await build({
    stdin: { contents, resolveDir, loader: 'ts' },
    bundle: true,
    minify: true,
    format: 'esm',
    conditions: ['workerd', 'worker'],
    target: 'es2023',
    write: false,
  });
  return outputFiles[0]?.text ?? '';
}

async function start(script: string): Promise<number> {
  const server = makeServer(script);
  started.push(server);
  const { port } = await server.ready;
  return Number(port);
}

function makeServer(script: string): Miniflare {
  const modules = [{ type: 'ESModule' as const, path: 'worker.js', contents: script }];
  return new Miniflare({ modules, host: '127.0.0.1', cf: false, compatibilityDate: '2026-07-30' });
}

/** From nothing to the first answer, ms: the median of a few, in turns. */
async function timeStarts(scripts: readonly string[]): Promise<readonly number[]> {
  const times = scripts.map((): number[] => []);
  for (let time = 0; time < STARTS; time += 1) {
    for (const [at, script] of scripts.entries()) times[at]?.push(await timeStart(script));
  }
  return times.map(medianOf);
}

async function timeStart(script: string): Promise<number> {
  const before = performance.now();
  const server = makeServer(script);
  await (await server.dispatchFetch('http://localhost/health')).text();
  const passed = performance.now() - before;
  await server.dispose();
  return passed;
}

async function send({ name, load, status }: Lane, count: number): Promise<LoadResult> {
  const result = await sendLoad({ ...load, count, connections: CONNECTIONS });
  const others = Object.keys(result.statuses).filter((one) => one !== status);
  if (others.length > 0) throw new Error(`${name} was answered ${others.join(', ')}.`);
  return result;
}

function print(found: ReadonlyMap<string, readonly LoadResult[]>): void {
  const [bare] = found.values();
  for (const [name, results] of found) {
    const rate = medianOf(results.map(({ perSecond }) => perSecond));
    const ratio = medianOf(
      results.map(({ perSecond }, at) => perSecond / (bare?.[at]?.perSecond ?? Number.NaN)),
    );
    const p99 = medianOf(results.map((one) => one.p99));
    const figures = `${rate.toFixed(0).padStart(7)}/s  ${ratio.toFixed(2)} × bare  p99 ${p99.toFixed(1)} ms`;
    console.log(`${name.padEnd(38)} ${figures}`);
  }
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
