import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll } from 'vitest';
import { VERSION } from '../../client/embed/version.ts';

/** The same files as if another version had made them, on an origin of its own. */
export const OLDER = '0.9.0';

/**
 * A door to a service at which everything calls itself an older version: call it at the top of the file.
 *
 * @returns a function that gives its origin, once it is told where the service is.
 */
export function useOlderVersion(): (home: string) => string {
  let server: Server | undefined;
  let origin = '';
  let port = 0;
  beforeAll(async () => {
    server = createServer(async ({ url = '/' }, response) => {
      const asked = await fetch(origin + url.replaceAll(OLDER, VERSION));
      const text = (await asked.text()).replaceAll(VERSION, OLDER);
      response.setHeader('Content-Type', asked.headers.get('content-type') ?? 'text/plain');
      response.setHeader('Access-Control-Allow-Origin', '*');
      response.end(text);
    });
    await new Promise<void>((done) => server?.listen(0, '127.0.0.1', done));
    port = (server.address() as AddressInfo).port;
  });
  afterAll(() => server?.close());
  return (home) => {
    origin = home;
    return `http://127.0.0.1:${port}`;
  };
}
