import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { gzipSync } from 'node:zlib';

/** A server that stands before another. */
export interface Compressing {
  /** `http://localhost:…`, with no slash at its end. */
  readonly origin: string;
  /** Changes what a path answers from now on, as a new version of the site would; nothing takes the change back. */
  readonly change: (path: string, edit?: (text: string) => string) => void;
  readonly stop: () => Promise<void>;
}

const TEXT = /^(text\/|application\/(json|manifest\+json|javascript)|image\/svg)/;
/** What belongs to one hop, and what compressing changes. */
const OWN = new Set(['content-length', 'content-encoding', 'transfer-encoding', 'connection']);

/**
 * Serves what another server does, texts compressed as the edge does it: the local runtime sends them as they are, so
 * that nothing could be told of transfer.
 *
 * @param origin of the server behind.
 */
export async function serveCompressed(origin: string): Promise<Compressing> {
  const edits = new Map<string, (text: string) => string>();
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk: Buffer) => chunks.push(chunk));
    request.on('end', () => void answer().catch(() => response.destroy()));
    const answer = async () => {
      const { method = 'GET', url = '/', headers } = request;
      const path = url.split('?')[0] ?? '';
      const asked = await fetch(origin + url, {
        method,
        headers: { 'Content-Type': headers['content-type'] ?? '', Accept: headers.accept ?? '*/*' },
        redirect: 'manual',
        ...(method === 'POST' && { body: Buffer.concat(chunks) }),
      });
      const bytes = Buffer.from(await asked.arrayBuffer());
      const edit = edits.get(path);
      const body = edit === undefined ? bytes : Buffer.from(edit(bytes.toString('utf8')));
      const isText = TEXT.test(asked.headers.get('content-type') ?? '');
      for (const [name, value] of asked.headers) {
        if (!OWN.has(name)) response.setHeader(name, value);
      }
      if (isText) response.setHeader('Content-Encoding', 'gzip');
      response.writeHead(asked.status).end(isText ? gzipSync(body, { level: 9 }) : body);
    };
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://localhost:${port}`,
    change: (path, edit) => {
      if (edit === undefined) edits.delete(path);
      else edits.set(path, edit);
    },
    stop: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
