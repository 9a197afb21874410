/**
 * Keeps the worker busy for a minute and looks at what memory it holds: `npm run soak`, or
 * `SECONDS_LONG=20 npm run soak`. Bounded in time and in count. The bare runtime with a fixed answer
 * then has as many requests: it holds on to memory too, and what matters is what we add. It ends with 1
 * where an answer was wrong.
 */
import { execFileSync } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Miniflare } from 'miniflare';
import { startServer } from '../../api/start.ts';
import { buildSite } from '../../client/build.ts';
import { sendLoad } from './send-load.ts';

const SECONDS = Number(process.env['SECONDS_LONG'] ?? 60);
const MOST_REQUESTS = 200_000;
const BATCH = 500;
/** Another plan each time, so that it is reckoned and the memory of answers fills to its bound. */
let asked = 0;
const anew = () => {
  asked += 1;
  return `/v1/plan?target.columns=1&target.rows=1&block.cut=8.${String(asked).padStart(6, '0')}1`;
};

const paths = [
  anew,
  '/v1/plan?target.width=40&target.height=50&explain=true',
  '/v1/plan.svg?target.size=throw',
  '/v1/plan?spare=300&none=1',
  '/none',
];

const BARE = `const body = 'x'.repeat(15000); export default { fetch: () => new Response(body) };`;

const folder = await mkdtemp(join(tmpdir(), 'ragbloom-'));
await buildSite(folder);
const server = await startServer({ build: folder, port: 0 });
let sent = 0;
try {
  sent = await soak(Number(new URL(server.origin).port));
} finally {
  await server.stop();
  await rm(folder, { recursive: true, force: true });
}
await soakBare(sent);

/** How many requests there were. */
async function soak(port: number): Promise<number> {
  const start = performance.now();
  const passed = () => (performance.now() - start) / 1000;
  const statuses: Record<string, number> = {};
  let warm: number | undefined;
  let sent = 0;
  while (passed() < SECONDS && sent < MOST_REQUESTS) {
    const path = paths[(sent / BATCH) % paths.length] ?? '/health';
    const result = await sendLoad({ port, path, count: BATCH, connections: 8 });
    sent += BATCH;
    for (const [status, times] of Object.entries(result.statuses)) {
      statuses[status] = (statuses[status] ?? 0) + times;
    }
    if (warm === undefined && passed() > SECONDS / 6) warm = await readMemory();
  }
  console.log(`${sent} requests in ${passed().toFixed(0)} s: ${JSON.stringify(statuses)}`);
  tellMemory('the worker', warm, await readMemory());
  const isWrong = Object.keys(statuses).some((status) => !['200', '404', '422'].includes(status));
  if (isWrong) process.exitCode = 1;
  return sent;
}

async function soakBare(count: number): Promise<void> {
  const modules = [{ type: 'ESModule' as const, path: 'bare.js', contents: BARE }];
  const bare = new Miniflare({ modules, host: '127.0.0.1', cf: false });
  const port = Number((await bare.ready).port);
  await sendLoad({ port, path: '/', count: Math.ceil(count / 6), connections: 8 });
  const warm = await readMemory();
  await sendLoad({ port, path: '/', count: Math.ceil((count * 5) / 6), connections: 8 });
  tellMemory('the bare runtime', warm, await readMemory());
  await bare.dispose();
}

function tellMemory(name: string, warm: number | undefined, end: number): void {
  const before = warm ?? Number.NaN;
  console.log(`${name}: ${before.toFixed(0)} MB when warm, ${end.toFixed(0)} MB at the end`);
}

/** Resident memory of the runtimes that this process started, MB. */
async function readMemory(): Promise<number> {
  const children = execFileSync('ps', ['-o', 'pid=', '--ppid', String(process.pid)], {
    encoding: 'utf8',
  });
  let kilobytes = 0;
  for (const pid of children.split(/\s+/).filter((one) => one !== '')) {
    const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
    kilobytes += Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0);
  }
  return kilobytes / 1024;
}
