import { readdir, readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';

/** Pages of somebody else, on an origin of their own. */
export interface Hosts {
  readonly origin: string;
  readonly stop: () => Promise<void>;
}

const FOLDER = new URL('../demo-data/hosts/', import.meta.url);

/** Where the pages say that the service is, until they are served. */
const WRITTEN_HOME = 'http://localhost:8787';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
};

/**
 * Serves the invented shop and the invented tutorial under another origin than the service, as somebody
 * else’s pages are: with the strictest policy that an element can be asked to live under. `?css=hostile`
 * puts the worst of style sheets behind their own.
 *
 * @param home origin of the service, without a slash at its end
 * @param port 0 for any free one
 */
export async function serveHosts(home: string, port: number): Promise<Hosts> {
  const files = new Map<string, string>();
  for (const name of await readdir(FOLDER)) {
    const text = await readFile(new URL(name, FOLDER), 'utf8');
    files.set(`/${name}`, text.replaceAll(WRITTEN_HOME, home));
  }
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', home).pathname;
    const place = path === '/' ? '/shop.html' : path;
    const name = files.has(place) ? place : `${place}.html`;
    const file = files.get(name);
    response.setHeader('Content-Type', TYPES[extname(name)] ?? 'text/plain');
    response.setHeader('Content-Security-Policy', writePolicy(home));
    if (file === undefined) response.writeHead(404).end('There is nothing here.');
    else void fill(file, request).then((text) => response.end(text), fail(response));
  });
  await new Promise<void>((done, reject) => {
    server.once('error', reject);
    // A name of its own, not localhost: to a browser, another site.
    server.listen(port, '127.0.0.1', done);
  });
  const { port: taken } = server.address() as AddressInfo;
  const stop = () => new Promise<void>((done) => void server.close(() => done()));
  return { origin: `http://127.0.0.1:${taken}`, stop };
}

function writePolicy(home: string): string {
  return [
    "default-src 'none'",
    `script-src 'self' ${home}`,
    "style-src 'self'",
    `img-src ${home}`,
    `connect-src ${home}`,
    `frame-src ${home}`,
    "form-action 'self'",
    "base-uri 'none'",
    "require-trusted-types-for 'script'",
    'trusted-types lit-html',
  ].join('; ');
}

async function fill(file: string, request: IncomingMessage): Promise<string> {
  const isHostile = request.url?.includes('css=hostile') === true;
  const styled = isHostile
    ? file.replace('</head>', '<link rel="stylesheet" href="/hostile.css"></head>')
    : file;
  if (!styled.includes('<!--sent-->')) return styled;
  let body = '';
  for await (const chunk of request.setEncoding('utf8')) body += chunk;
  const sent = [...new URLSearchParams(body)].map(([name, value]) => `${name}: ${value}`);
  return styled.replace('<!--sent-->', () => escapeMarks(sent.join('\n')));
}

function escapeMarks(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

function fail(response: ServerResponse) {
  return () => response.writeHead(500).end();
}
