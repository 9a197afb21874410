import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { startWorker, useWorker } from '../support/worker.ts';

const worker = useWorker();

test('startServer serves /health at the address it gives', async () => {
  const answer = await fetch(`${worker.origin()}/health`);
  expect(answer.status).toBe(200);
});

test('startServer serves pages under a policy that allows no inline script or style', async () => {
  const answer = await worker.fetch('/');
  expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
  const policy = answer.headers.get('content-security-policy') ?? '';
  expect(policy).toContain("default-src 'none'; script-src 'self'; style-src 'self'");
  expect(policy).not.toContain('unsafe');
});

test('startServer with a limit of rate answers one request too many with 429, and /health always', async () => {
  const server = await startWorker(true);
  try {
    const ask = () => fetch(`${server.origin}/v1/plan?nonsense=1`);
    const statuses = new Set<number>();
    // The window may start anew once while this runs.
    for (let sent = 0; sent < 1300 && !statuses.has(429); sent += 50) {
      const answers = await Promise.all(Array.from({ length: 50 }, ask));
      for (const answer of answers) {
        statuses.add(answer.status);
        await answer.text();
      }
    }
    expect([...statuses].toSorted()).toEqual([422, 429]);
    const refused = await ask();
    expect(refused.headers.get('retry-after')).toBe('60');
    expect(refused.headers.get('ratelimit-policy')).toBe('"default";q=600;w=60');
    expect((await fetch(`${server.origin}/health`)).status).toBe(200);
  } finally {
    await server.stop();
  }
}, 60_000);

test('PORT=<taken> npm start says so in a sentence and ends with 1', async () => {
  const holder = createServer().listen(0, '127.0.0.1');
  await once(holder, 'listening');
  const { port } = holder.address() as { port: number };
  const { code, told } = await runStart(String(port));
  holder.close();
  expect(told).toBe(
    `Port ${port} is taken: stop what uses it, or choose another as in PORT=8788.\n`,
  );
  expect(code).toBe(1);
});

test('PORT=abc npm start says what a port is and ends with 1', async () => {
  const { code, told } = await runStart('abc');
  expect(told).toBe('PORT is "abc": give a whole number from 0 to 65535.\n');
  expect(code).toBe(1);
});

async function runStart(port: string): Promise<{ code: number; told: string }> {
  const child = spawn(process.execPath, ['api/start.ts'], {
    env: { ...process.env, PORT: port },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let told = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    told += text;
  });
  const [code] = (await once(child, 'close')) as [number];
  return { code, told };
}
