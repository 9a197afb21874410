import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serve } from '@hono/node-server';
import { answerRequest } from './app.ts';
import { loadFiles } from './load-files.ts';
import { readPort } from './read-port.ts';

/** Where it listens, and how it is ended. */
export interface NodeServer {
  readonly origin: string;
  readonly stop: () => Promise<void>;
}

const READS: readonly string[] = ['GET', 'HEAD'];

/**
 * The door of Node: the same service and the same pages, for whoever runs it on a machine of their own.
 * There is no limit of rate here; what stands in front of it should have one.
 *
 * @param options `assets` is the folder of pages that the build filled; `port` is 0 for any free one
 */
export async function startNode(options: {
  readonly assets: string;
  readonly port: number;
  readonly host: string;
}): Promise<NodeServer> {
  const serveFile = await loadFiles(options.assets);
  const ASSETS = { fetch: serveFile };
  const answer = async (request: Request): Promise<Response> => {
    const answered = await answerRequest(request, { ASSETS });
    if (answered.status !== 404 || !READS.includes(request.method)) return answered;
    const file = await serveFile(request);
    return file.status === 404 ? answered : file;
  };
  return new Promise((resolve, reject) => {
    const { port, host: hostname } = options;
    const server = serve({ fetch: answer, port, hostname }, (address) => {
      const stop = () => new Promise<void>((done) => void server.close(() => done()));
      resolve({ origin: `http://localhost:${address.port}`, stop });
    });
    server.once('error', reject);
  });
}

if (import.meta.main) {
  const port = readPort(process.env['PORT']);
  if (port === undefined) throw new Error('PORT is no port: give a number from 0 to 65535.');
  const assets = fileURLToPath(new URL('../.build/assets', import.meta.url));
  const host = process.env['HOST'] ?? '127.0.0.1';
  const { origin, stop } = await startNode({ assets: join(assets, '/'), port, host });
  console.log(`Ragbloom is ready at ${origin}`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => void stop().then(() => process.exit(0)));
  }
}
