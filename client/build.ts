import { globSync } from 'node:fs';
import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { ELEMENTS, PAGE, WORKER } from './build/budgets.ts';
import { bundleElements, type ElementBundle, listLoaded } from './build/bundle-elements.ts';
import { bundleLoaders } from './build/bundle-loaders.ts';
import { bundleScripts, type Script } from './build/bundle-scripts.ts';
import { fillPage } from './build/fill-page.ts';
import { placeFile } from './build/place-file.ts';
import { findBreach, type Signatures, signAll, signFile } from './build/sign-files.ts';
import { findExcess, type Load, weighLoads } from './build/weigh-loads.ts';
import { VERSION } from './embed/version.ts';
import { TOKENS } from './look/tokens.ts';
import { bundleOffline } from './offline/bundle-offline.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
/** Where the scripts of the elements lie in the folder of pages. */
const FOLDER = `embed/${VERSION}/`;
/** The script that brings them, which stays at its address from version to version. */
const LOADER = `embed/v${VERSION.split('.')[0]}.js`;
/** What the bytes of each file of this version come to, for whoever pins it. */
const MANIFEST = 'embed/manifest.json';

/** What the counter fetches only when it is needed, and must have without a signal too. */
const LATER_AT_COUNTER = [
  'client/data/counter-nearest.ts',
  'client/drawing/draw-code.ts',
  'client/text/faults/source.ts',
];

/** Scripts of pages that stand by themselves: of the frames, and of the page that makes snippets. */
const ALONE = ['client/frame/frame.ts', 'client/maker/maker.ts'];

/** What a build made. */
export interface Site {
  readonly worker: Script;
  /** All scripts that a browser loads. */
  readonly scripts: readonly Script[];
  readonly loads: readonly Load[];
  /** Those of this version by their path, signed. */
  readonly files: Signatures;
}

/**
 * Builds the whole site from the sources beside this file: the worker, the scripts of the elements, the pages.
 * Files are put in place one by one and whole, so a server that reads meanwhile never sees half of one.
 *
 * @param out the folder to fill: `worker/worker.js` and `assets/`.
 */
export async function buildSite(out: string): Promise<Site> {
  const [worker, bundle] = await Promise.all([
    bundleWorker(),
    bundleElements(Object.keys(ELEMENTS)),
  ]);
  const { stable, pinned } = await bundleLoaders(bundle, VERSION);
  const versioned = {
    [`${FOLDER}embed.js`]: pinned.contents,
    ...Object.fromEntries(bundle.scripts.map(({ name, contents }) => [FOLDER + name, contents])),
  };
  const signed = Object.entries(versioned).map(([path, file]) => [`/${path}`, signFile(file)]);
  const files: Signatures = Object.fromEntries(signed);
  const pages = await listPages(bundle);
  const alone = await bundleScripts({ entryPoints: ALONE, entryNames: '[name]', format: 'iife' });
  const assets: Readonly<Record<string, string | Uint8Array>> = {
    ...versioned,
    [LOADER]: stable.contents,
    [MANIFEST]: `${JSON.stringify({ version: VERSION, files }, undefined, 2)}\n`,
    ...Object.fromEntries(alone.map(({ name, contents }) => [name, contents])),
    ...pages,
  };
  const lazy = listLater(bundle.scripts, LATER_AT_COUNTER).map((name) => FOLDER + name);
  const offline = await bundleOffline(assets, { page: 'counter.html', lazy });
  await placeFile(join(out, 'worker', 'worker.js'), worker.contents);
  const placed = Object.entries({ ...assets, ...offline }).map(async ([path, contents]) => {
    await placeFile(join(out, 'assets', path), contents);
    return join(out, 'assets', path);
  });
  await removeOthers(join(out, 'assets'), new Set(await Promise.all(placed)));
  const loads = [
    { name: 'the worker', gzip: worker.gzip, limit: WORKER },
    ...weighLoads({ stable, pinned }, bundle),
    ...weighPages(stable, bundle, pages),
  ];
  return { worker, scripts: [stable, pinned, ...bundle.scripts], loads, files };
}

/** What an element fetches later, by its sources, with all that this loads. */
function listLater(scripts: readonly Script[], sources: readonly string[]): readonly string[] {
  return scripts
    .filter(({ entry = '' }) => sources.includes(entry))
    .flatMap((script) => listLoaded(script, scripts));
}

async function bundleWorker(): Promise<Script> {
  const [worker] = await bundleScripts({
    entryPoints: ['api/worker.ts'],
    entryNames: '[name]',
    conditions: ['workerd', 'worker'],
    target: 'es2023',
  });
  if (worker === undefined) throw new Error('The bundler gave no worker.');
  return worker;
}

/** What stands in the folders of pages and of the look, by its path among the assets. */
async function listPages({
  elements,
}: ElementBundle): Promise<Record<string, string | Uint8Array>> {
  const cwd = join(root, 'client');
  const sources = [
    ...globSync('pages/**/*', { cwd, withFileTypes: true }),
    ...globSync('look/**/*.css', { cwd, withFileTypes: true }),
  ].filter((entry) => entry.isFile() && !entry.name.endsWith('.ts'));
  const read = sources.map(async ({ parentPath, name }) => {
    const source = join(parentPath, name);
    const path = source
      .slice(cwd.length + 1)
      .replaceAll('\\', '/')
      .replace(/^pages\//, '');
    const bytes = await readFile(source);
    if (path === 'look/page.css') return [path, `:root {${TOKENS}}\n${bytes}`];
    return [path, path.endsWith('.html') ? fillPage(`${bytes}`, elements, `/${FOLDER}`) : bytes];
  });
  return Object.fromEntries(await Promise.all(read));
}

/** Pages with their style sheet and all that their elements load before they show. */
function weighPages(
  loader: Script,
  { scripts }: ElementBundle,
  pages: Readonly<Record<string, string | Uint8Array>>,
): readonly Load[] {
  const css = pages['look/page.css'] ?? '';
  return Object.entries(pages).flatMap(([path, html]) => {
    if (!path.endsWith('.html') || !`${html}`.includes(LOADER)) return [];
    const held = scripts.filter(({ name }) => `${html}`.includes(`/${name}"`));
    const texts = [html, css].map((text) => gzipSync(text, { level: 9 }).length);
    const parts = [...texts, loader.gzip, ...held.map(({ gzip }) => gzip)];
    return [{ name: path, gzip: parts.reduce((sum, part) => sum + part, 0), limit: PAGE }];
  });
}

async function removeOthers(folder: string, wanted: ReadonlySet<string>): Promise<void> {
  const found = globSync('**', { cwd: folder, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const stale = found.filter((file) => !wanted.has(file));
  await Promise.all(stale.map((file) => rm(file, { force: true })));
}

if (import.meta.main) {
  const { loads, files } = await buildSite(join(root, '.build'));
  for (const { name, gzip, limit } of loads) {
    const share = ((100 * gzip) / limit).toFixed(1);
    console.log(`${String(gzip).padStart(7)} of ${limit}, ${share.padStart(5)} %: ${name}`);
  }
  console.log(`Version ${VERSION} comes to ${signAll(files)}`);
  const excess = [...findExcess(loads), ...[findBreach(VERSION, files) ?? []].flat()];
  for (const sentence of excess) console.error(sentence);
  if (excess.length > 0) process.exitCode = 1;
}
