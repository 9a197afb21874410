import { createHash } from 'node:crypto';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build } from 'esbuild';

/** Files of a built site, by their path in the folder that is served. */
export type Assets = Readonly<Record<string, string | Uint8Array>>;

/** What is kept on a device beforehand. */
export interface Keeping {
  /** The file of the page that is kept whole. */
  readonly page: string;
  /** Files that the page fetches only when they are needed. */
  readonly lazy: readonly string[];
}

/** In a page, where the version of what is kept is put. */
const VERSION_MARK = '<!--version-->';
/** What every page loads beside its element, and the service worker itself. */
const NAMES = { 'run-offline.ts': 'offline', 'service-worker.ts': 'service-worker' } as const;

/**
 * Adds to a built site what keeps one of its pages for when there is no signal: the script that every page loads, a
 * service worker made for exactly these files, and the version in the page. The worker's text changes exactly when
 * something changes that it keeps, which is how a browser knows of a newer version.
 *
 * @returns the files that are new or changed.
 */
export async function bundleOffline(assets: Assets, { page, lazy }: Keeping): Promise<Assets> {
  const scripts = await bundle('run-offline.ts');
  const all: Assets = { ...assets, ...scripts };
  const html = `${all[page] ?? ''}`;
  const kept = [...new Set([page, ...listFiles(html, all), ...lazy])];
  const digest = createHash('sha256');
  for (const file of kept) digest.update(file).update(all[file] ?? '');
  const version = digest.digest('hex').slice(0, 8);
  const worker = await bundle('service-worker.ts', {
    VERSION: JSON.stringify(version),
    PAGES: JSON.stringify(Object.keys(all).filter(isPage).map(pathOf)),
    KEPT: JSON.stringify(kept.map(pathOf)),
  });
  return { ...scripts, ...worker, [page]: html.replace(VERSION_MARK, version) };
}

/**
 * The path under which a file is served.
 *
 * @example
 * pathOf('counter.html') // => '/counter'
 * pathOf('index.html') // => '/'
 * pathOf('look/page.css') // => '/look/page.css'
 */
export function pathOf(file: string): string {
  return `/${file.replace(/(^index)?\.html$/, '')}`;
}

function isPage(file: string): boolean {
  return /^[a-z-]+\.html$/.test(file);
}

/** Files of our own that a page names. */
function listFiles(html: string, all: Assets): readonly string[] {
  const named = [...html.matchAll(/<(?:link|script)\b[^>]*(?:href|src)="\/([^"?#]+)"/g)];
  return named.map(([, file = '']) => file).filter((file) => all[file] !== undefined);
}

/** A script and whatever it fetches only when it is needed, by their files. */
async function bundle(source: keyof typeof NAMES, define: BuildOptions['define'] = {}) {
  const { outputFiles } = await build({
    entryPoints: { [NAMES[source]]: fileURLToPath(new URL(source, import.meta.url)) },
    outdir: '/',
    chunkNames: 'offline-[name]-[hash]',
    splitting: true,
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    define,
  });
  return Object.fromEntries(outputFiles.map(({ path, text }) => [basename(path), text]));
}
