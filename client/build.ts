import { globSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type BuildOptions, build, type Metafile } from 'esbuild';
import { TOKENS } from './look/tokens.ts';
import { ELEMENT } from './make-lighter.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Greatest size of each bundle that a browser loads, in bytes after gzip: the one table of budgets. */
export const budget: Readonly<Record<string, number>> = {
  'embed.js': 25_000,
  'on-device.js': 52_000,
  'embed-wash.js': 38_000,
  'wash-on-device.js': 20_000,
  'embed-stash.js': 32_000,
  'stash-on-device.js': 30_000,
  'embed-kits.js': 32_000,
  'kits-on-device.js': 40_000,
  'csv-tool.js': 9_000,
};

/** One bundled script: its name, its bytes after gzip, and what went into it. */
export type Bundle = {
  readonly name: string;
  readonly gzip: number;
  readonly meta: Metafile;
};

const targets: readonly BuildOptions[] = [
  {
    entryPoints: ['client/embed.ts'],
    outfile: 'assets/embed.js',
    ...ELEMENT,
  },
  {
    entryPoints: ['client/embed-wash.ts'],
    outfile: 'assets/embed-wash.js',
    ...ELEMENT,
  },
  {
    entryPoints: ['client/data/wash-on-device.ts'],
    outfile: 'assets/wash-on-device.js',
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
  },
  {
    entryPoints: ['client/data/on-device.ts'],
    outfile: 'assets/on-device.js',
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
  },
  {
    entryPoints: ['client/embed-stash.ts'],
    outfile: 'assets/embed-stash.js',
    ...ELEMENT,
  },
  {
    entryPoints: ['client/data/stash-on-device.ts'],
    outfile: 'assets/stash-on-device.js',
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
  },
  {
    entryPoints: ['client/embed-kits.ts'],
    outfile: 'assets/embed-kits.js',
    ...ELEMENT,
  },
  {
    entryPoints: ['client/data/kits-on-device.ts'],
    outfile: 'assets/kits-on-device.js',
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
  },
  {
    entryPoints: ['client/data/csv-tool.ts'],
    outfile: 'assets/csv-tool.js',
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    legalComments: 'external',
  },
  {
    entryPoints: ['api/worker.ts'],
    outfile: 'worker/worker.js',
    platform: 'browser',
    conditions: ['workerd', 'worker'],
    format: 'esm',
    target: 'es2023',
    legalComments: 'none',
  },
];

/**
 * Builds the whole site from the sources beside this file: the worker, the client bundle, the pages.
 * Files are put in place one by one and whole, so a server that reads meanwhile never sees half of one.
 *
 * @param out the folder to fill: `worker/worker.js`, `assets/` and a `*.meta.json` for each bundle.
 * @returns the bundles, in no promised order; one whose entry file does not exist is left out.
 */
export async function buildSite(out: string): Promise<readonly Bundle[]> {
  const bundled = await Promise.all(targets.filter(hasEntry).map((target) => bundle(target, out)));
  const copied = await copyPages(out);
  const wanted = new Set([...bundled.flatMap(({ written }) => written), ...copied]);
  const found = globSync('assets/**', { cwd: out, withFileTypes: true });
  const stale = found
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !wanted.has(file));
  await Promise.all(stale.map((file) => rm(file, { force: true })));
  return bundled.map(({ name, gzip, meta }) => ({ name, gzip, meta }));
}

/** Says of each bundle that is over its budget by how much; an empty list when none is. */
export function findExcess(
  bundles: readonly Pick<Bundle, 'name' | 'gzip'>[],
  limits = budget,
): readonly string[] {
  return bundles.flatMap(({ name, gzip }) => {
    const limit = limits[name];
    if (limit === undefined || gzip <= limit) return [];
    return [
      `${name} is ${gzip} bytes after gzip, ${gzip - limit} more than its budget of ${limit}.`,
    ];
  });
}

function hasEntry({ entryPoints }: BuildOptions): boolean {
  return Array.isArray(entryPoints) && globSync(entryPoints.map(String), { cwd: root }).length > 0;
}

async function bundle(target: BuildOptions, out: string) {
  const outfile = join(out, String(target.outfile));
  const shared = { absWorkingDir: root, bundle: true, minify: true, charset: 'utf8' } as const;
  const { outputFiles, metafile } = await build({
    ...target,
    ...shared,
    outfile,
    metafile: true,
    write: false,
  });
  const name = basename(String(target.outfile));
  const script = outputFiles.find((file) => file.path === outfile);
  if (script === undefined) throw new Error(`The bundler gave no ${name}.`);
  const metaFile = join(out, `${name.replace('.js', '')}.meta.json`);
  await Promise.all([
    ...outputFiles.map((file) => placeFile(file.path, file.contents)),
    placeFile(metaFile, JSON.stringify(metafile)),
  ]);
  const gzip = gzipSync(script.contents, { level: 9 }).length;
  return { name, gzip, meta: metafile, written: outputFiles.map((file) => file.path) };
}

async function copyPages(out: string): Promise<readonly string[]> {
  const sources = [
    ...globSync('pages/**/*', { cwd: join(root, 'client'), withFileTypes: true }),
    ...globSync('look/**/*.css', { cwd: join(root, 'client'), withFileTypes: true }),
  ].filter((entry) => entry.isFile() && !entry.name.endsWith('.ts'));
  return Promise.all(
    sources.map(async (entry) => {
      const source = join(entry.parentPath, entry.name);
      const path = source.slice(join(root, 'client', '/').length).replace(/^pages[/\\]/, '');
      const target = join(out, 'assets', path);
      const text = await readFile(source);
      const isLook = path === join('look', 'page.css');
      await placeFile(target, isLook ? `:root {${TOKENS}}\n${text}` : text);
      return target;
    }),
  );
}

async function placeFile(path: string, contents: string | Uint8Array): Promise<void> {
  const draft = join(dirname(path), `.${process.pid}-${Math.random().toString(36).slice(2)}.draft`);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(draft, contents);
  await rename(draft, path);
}

if (import.meta.main) {
  const bundles = await buildSite(join(root, '.build'));
  for (const { name, gzip } of bundles) {
    const limit = budget[name];
    const share = limit === undefined ? '' : ` of ${limit}, ${((100 * gzip) / limit).toFixed(1)} %`;
    console.log(`${name.padEnd(10)} ${gzip} bytes after gzip${share}`);
  }
  const excess = findExcess(bundles);
  for (const sentence of excess) console.error(sentence);
  if (excess.length > 0) process.exitCode = 1;
}
