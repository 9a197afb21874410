import { readFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Log, LogLevel, Miniflare } from 'miniflare';
import { parse } from 'smol-toml';
import { readPort } from './read-port.ts';
import { serveHosts } from './serve-hosts.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** What of wrangler.toml the local server needs. */
type Settings = {
  readonly name: string;
  readonly compatibility_date: string;
  readonly ratelimits: readonly {
    readonly name: string;
    readonly namespace_id: string;
    readonly simple: { readonly limit: number; readonly period: 10 | 60 };
  }[];
  readonly assets: {
    readonly binding: string;
    readonly html_handling: 'auto-trailing-slash';
    readonly not_found_handling: 'none';
    readonly run_worker_first: string[];
  };
};

/** A server that answers: where it stands, one request to it, and its end. */
export type RunningServer = {
  readonly origin: string;
  readonly fetch: Miniflare['dispatchFetch'];
  readonly stop: () => Promise<void>;
};

/**
 * Starts the built worker and the built pages on the real worker runtime, with the settings of wrangler.toml.
 *
 * @param options `build` is the folder that the build filled; `port` is 0 for any free one; with
 *   `limited` each caller has the requests a minute that wrangler.toml says, else there is no limit.
 * @returns the running server, once its `/health` answers.
 */
export async function startServer(options: {
  readonly build: string;
  readonly port: number;
  readonly limited?: boolean;
}): Promise<RunningServer> {
  const settings = await readSettings();
  const server = new Miniflare({
    name: settings.name,
    host: '127.0.0.1',
    port: options.port,
    cf: false,
    log: new Log(LogLevel.ERROR),
    compatibilityDate: settings.compatibility_date,
    modules: [
      {
        type: 'ESModule',
        path: 'worker.js',
        contents: await readFile(join(options.build, 'worker', 'worker.js'), 'utf8'),
      },
    ],
    ratelimits: options.limited === true ? readLimits(settings) : {},
    assets: {
      workerName: settings.name,
      binding: settings.assets.binding,
      directory: join(options.build, 'assets'),
      assetConfig: {
        html_handling: settings.assets.html_handling,
        not_found_handling: settings.assets.not_found_handling,
      },
      routerConfig: {
        has_user_worker: true,
        static_routing: { user_worker: settings.assets.run_worker_first },
      },
    },
  });
  const { port } = await server.ready;
  const origin = `http://localhost:${port}`;
  const health = await server.dispatchFetch(`${origin}/health`);
  if (!health.ok) throw new Error(`/health answered ${health.status}.`);
  await health.body?.cancel();
  return { origin, fetch: server.dispatchFetch, stop: () => server.dispose() };
}

function readLimits({ ratelimits }: Settings) {
  return Object.fromEntries(ratelimits.map(({ name, ...limit }) => [name, limit]));
}

async function readSettings(): Promise<Settings> {
  const file = await readFile(join(root, 'wrangler.toml'), 'utf8');
  return parse(file) as unknown as Settings;
}

function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen(port, '127.0.0.1', () => probe.close(() => resolve(true)));
  });
}

async function main(): Promise<void> {
  const port = readPort(process.env['PORT']);
  if (port === undefined) {
    throw new Error(`PORT is "${process.env['PORT']}": give a whole number from 0 to 65535.`);
  }
  if (!(await isFree(port))) {
    throw new Error(`Port ${port} is taken: stop what uses it, or choose another as in PORT=8788.`);
  }
  const server = await startServer({ build: join(root, '.build'), port, limited: true });
  console.log(`Ragbloom is ready at ${server.origin}`);
  const hosts = await startHosts(server.origin);
  const stop = () => Promise.all([server.stop(), hosts?.stop()]);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => void stop().then(() => process.exit(0)));
  }
}

/** The pages of an invented shop and blog that embed this service, on a port of their own: `HOSTS=0` leaves them out. */
async function startHosts(home: string) {
  if (process.env['HOSTS'] === '0') return undefined;
  const next = Number(new URL(home).port) + 1;
  const hosts = await serveHosts(home, (await isFree(next)) ? next : 0);
  console.log(
    `An invented shop and an invented blog embed it at ${hosts.origin}/shop and /tutorial`,
  );
  return hosts;
}

if (import.meta.main) {
  await main().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  });
}
