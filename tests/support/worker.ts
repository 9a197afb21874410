import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, inject } from 'vitest';
import { type RunningServer, startServer } from '../../api/start.ts';

/** The real worker runtime with the sources as they are now, on a port of its own. */
export type TestWorker = {
  /** `http://localhost:…`, with no slash at its end. */
  readonly origin: () => string;
  /** One request to a path, or to a whole address, as the runtime would get it. */
  readonly fetch: RunningServer['fetch'];
  /** The folder of the pages that it serves. */
  readonly assets: () => string;
};

/** A worker and the pages that it was built with. */
type StartedWorker = RunningServer & { readonly assets: string };

/** Starts the built site from a copy of its own, with a limit of rate or without; stop it when done. */
export async function startWorker(limited = false): Promise<StartedWorker> {
  const build = await mkdtemp(join(tmpdir(), 'ragbloom-'));
  const clear = () => rm(build, { recursive: true, force: true });
  try {
    await cp(inject('site'), build, { recursive: true });
    const server = await startServer({ build, port: 0, limited });
    return { ...server, assets: join(build, 'assets'), stop: () => server.stop().then(clear) };
  } catch (error) {
    await clear();
    throw error;
  }
}

/** One worker for all the tests of a file: call it at the top of the file. */
export function useWorker(): TestWorker {
  let server: StartedWorker | undefined;
  const running = () => {
    if (server === undefined) throw new Error('The worker runs only inside a test.');
    return server;
  };
  beforeAll(async () => {
    server = await startWorker();
  }, 60_000);
  afterAll(() => server?.stop());
  return {
    origin: () => running().origin,
    assets: () => running().assets,
    fetch: (input, init) =>
      running().fetch(typeof input === 'string' ? new URL(input, running().origin) : input, init),
  };
}
