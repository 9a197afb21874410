import { createHash } from 'node:crypto';
import { globSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { matchesEtag } from './http/etag.ts';
import { chooseHeaders, readHeaderRules } from './read-header-rules.ts';

/** Gives the file at the path of a request, or a bare 404. */
export type FileServer = (request: Request) => Promise<Response>;

interface LoadedFile {
  readonly body: Uint8Array<ArrayBuffer>;
  readonly headers: Readonly<Record<string, string>>;
}

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};

/**
 * Holds every file of a folder in memory, as the edge would serve it: `/` is `/index.html`, `/a` is
 * `/a.html` where there is no such file, each with a strong ETag and what `_headers` says. Only what
 * stood in the folder at the start can ever be asked for, so no path leads out of it.
 */
export async function loadFiles(folder: string): Promise<FileServer> {
  const rules = readHeaderRules(await readFile(join(folder, '_headers'), 'utf8').catch(() => ''));
  const files = new Map<string, LoadedFile>();
  const found = globSync('**/*', { cwd: folder, withFileTypes: true });
  for (const entry of found.filter((one) => one.isFile() && !one.name.startsWith('_'))) {
    const file = join(entry.parentPath, entry.name);
    const path = file.slice(folder.length).replaceAll('\\', '/').replace(/^\/?/, '/');
    const body = new Uint8Array(await readFile(file));
    const headers = {
      'Cache-Control': 'public, max-age=0, must-revalidate',
      'Content-Type': TYPES[extname(path)] ?? 'application/octet-stream',
      ETag: `"${createHash('sha256').update(body).digest('hex').slice(0, 32)}"`,
      ...Object.fromEntries(chooseHeaders(rules, path)),
    };
    files.set(path, { body, headers });
  }
  return async (request) => {
    const path = new URL(request.url).pathname;
    const places = [path, `${path}.html`, `${path.replace(/\/$/, '')}/index.html`];
    const file = places.map((place) => files.get(place)).find((one) => one !== undefined);
    return file === undefined ? new Response(null, { status: 404 }) : serve(file, request);
  };
}

function serve({ body, headers }: LoadedFile, request: Request): Response {
  const isHeld = matchesEtag(request.headers.get('If-None-Match'), headers['ETag'] ?? '');
  if (isHeld) return new Response(null, { status: 304, headers });
  return new Response(request.method === 'HEAD' ? null : body, { headers });
}
