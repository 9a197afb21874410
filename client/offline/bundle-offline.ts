import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** What the service worker is made for: the files as they were built. */
export interface BuiltSite {
  /** The folder of the pages as they are served. */
  readonly assets: string;
  /** Paths of all pages, as a browser asks for them. */
  readonly pages: readonly string[];
  /** Paths to keep beforehand: pages, scripts, styles, pictures. */
  readonly kept: readonly string[];
}

/** A service worker for exactly these files. */
export interface OfflineBundle {
  /** A digest of all that is kept: another one where a byte of it is another. */
  readonly version: string;
  readonly script: string;
}

/**
 * Makes the service worker of a built site. Its text changes exactly when something changes that it keeps, which is how
 * a browser knows of a newer version.
 */
export async function bundleOffline({ assets, pages, kept }: BuiltSite): Promise<OfflineBundle> {
  const digest = createHash('sha256');
  for (const path of kept) {
    digest.update(path).update(await readFile(join(assets, fileOf(path, pages))));
  }
  const version = digest.digest('hex').slice(0, 8);
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL('service-worker.ts', import.meta.url))],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    define: {
      VERSION: JSON.stringify(version),
      PAGES: JSON.stringify(pages),
      KEPT: JSON.stringify(kept),
    },
  });
  return { version, script: outputFiles[0]?.text ?? '' };
}

/**
 * The file that is served under a path.
 *
 * @example
 * fileOf('/counter', ['/counter']) // => 'counter.html'
 * fileOf('/', ['/']) // => 'index.html'
 * fileOf('/look/page.css', []) // => 'look/page.css'
 */
export function fileOf(path: string, pages: readonly string[]): string {
  if (!pages.includes(path)) return path.slice(1);
  return path === '/' ? 'index.html' : `${path.slice(1)}.html`;
}
