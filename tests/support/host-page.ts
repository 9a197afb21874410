import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll } from 'vitest';

/** A page of somebody else, on an origin of its own. */
export interface HostPage {
  /** Where it is, once it has this HTML in its body. */
  readonly serve: (body: string, head?: string) => string;
}

/** One foreign page for all the tests of a file: call it at the top of the file. */
export function useHostPage(): HostPage {
  let html = '';
  const server = createServer((_request, response) => {
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(html);
  });
  beforeAll(() => new Promise<void>((done) => void server.listen(0, '127.0.0.1', done)));
  afterAll(() => void server.close());
  return {
    serve: (body, head = '') => {
      html = `<!doctype html><html lang="en"><head><title>Somebody else</title><link rel="icon" href="data:,">${head}</head><body>${body}</body></html>`;
      return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    },
  };
}
