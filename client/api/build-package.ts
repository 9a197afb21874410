import { execFile } from 'node:child_process';
import { globSync } from 'node:fs';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path/posix';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { ELEMENTS } from '../build/budgets.ts';
import { writeManifest } from '../build/write-manifest.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What each entry of the package gives out, and from which source. */
const ENTRIES: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  client: {
    'client/api/make-client.ts': ['makeClient', 'type Calls', 'type Client', 'type ClientOptions'],
    'client/api/problem-error.ts': [
      ...['ProblemError', 'UnreachableError', 'type Problem', 'type ToldFault'],
    ],
    'client/api/write-address.ts': ['writeAddress'],
    'api/core/contract.ts': ['type *'],
  },
  core: {
    'api/core/plan.ts': ['planQuilt'],
    'api/core/yardage.ts': ['planYardage'],
    'api/core/wash.ts': ['predictWash'],
    'api/core/wish/resolve-plan.ts': ['resolvePlan'],
    'api/core/wish/resolve-yardage.ts': ['resolveYardage'],
    'api/core/wish/resolve-wash.ts': ['resolveWash'],
    'api/core/wish/read-wish.ts': ['readWish'],
    'api/core/read-length.ts': ['readLength'],
    'api/core/write-length.ts': ['writeLength'],
    'api/core/engine.ts': ['ENGINE'],
    'api/core/limits.ts': ['LENGTH_LIMITS', 'NUMBER_LIMITS', 'SIZE_LIMITS'],
    'api/core/outcome.ts': ['type Fault', 'type Outcome', 'type Path'],
    'api/core/faults.ts': ['type FaultCode'],
    'api/core/wish/reading.ts': ['type Resolved'],
    'api/core/contract.ts': ['type *'],
  },
};

const NAMES = Object.keys(ELEMENTS);
const sourceOf = (name: string) => `client/elements/${name}/${name}-element.ts`;

/**
 * Makes what is published: for each entry one script and its types, with nothing left to load; for each element one
 * that registers it and one that holds its class alone, which share what they have in common and load Lit.
 *
 * @param out folder to fill, from the folder of the project
 */
export async function buildPackage(out: string): Promise<void> {
  await rm(join(root, out), { recursive: true, force: true });
  await writeTypes(out);
  await Promise.all([
    ...Object.keys(ENTRIES).map((entry) => buildEntry(entry, out)),
    buildElements(out),
    ...NAMES.map((name) => writeElementTypes(name, out)),
  ]);
  const manifest = await writeManifest(NAMES, `${out}/`);
  await writeFile(join(root, out, 'custom-elements.json'), manifest);
}

async function buildElements(out: string): Promise<void> {
  const entries = NAMES.flatMap((name) => [
    [`elements/${name}`, `client/embed/register-${name}.ts`],
    [`classes/${name}`, sourceOf(name)],
  ]);
  await build({
    entryPoints: Object.fromEntries(entries),
    absWorkingDir: root,
    outdir: join(root, out),
    chunkNames: 'parts/[hash]',
    external: ['lit', 'lit/*'],
    bundle: true,
    splitting: true,
    charset: 'utf8',
    format: 'esm',
    target: 'es2022',
    platform: 'browser',
  });
}

/** Types of an element: of its class, and of the tag where it is registered. */
async function writeElementTypes(name: string, out: string): Promise<void> {
  const types = `../types/${sourceOf(name).replace(/\.ts$/, '.js')}`;
  const title = `${name.charAt(0).toUpperCase()}${name.slice(1)}Element`;
  const tag = `import type { ${title} } from '${types}';
declare global {
  interface HTMLElementTagNameMap {
    'ragbloom-${name}': ${title};
  }
}
export {};
`;
  const write = async (folder: string, text: string) => {
    await mkdir(join(root, out, folder), { recursive: true });
    await writeFile(join(root, out, folder, `${name}.d.ts`), text);
  };
  await Promise.all([write('elements', tag), write('classes', `export * from '${types}';\n`)]);
}

async function buildEntry(entry: string, out: string): Promise<void> {
  await build({
    stdin: {
      contents: writeEntry(entry, (source) => `./${source}`),
      resolveDir: root,
      loader: 'ts',
    },
    outfile: join(root, out, `${entry}.js`),
    bundle: true,
    charset: 'utf8',
    format: 'esm',
    target: 'es2022',
    platform: 'neutral',
  });
  const types = writeEntry(entry, (source) => `./types/${source.replace(/\.ts$/, '.js')}`);
  await writeFile(join(root, out, `${entry}.d.ts`), types);
}

function writeEntry(entry: string, locate: (source: string) => string): string {
  return Object.entries(ENTRIES[entry] ?? {})
    .map(([source, names]) =>
      names[0] === 'type *'
        ? `export type * from '${locate(source)}';\n`
        : `export { ${names.join(', ')} } from '${locate(source)}';\n`,
    )
    .join('');
}

/** Types of all that the entries reach, each import turned from the source's name into that of its types. */
async function writeTypes(out: string): Promise<void> {
  const entries = Object.values(ENTRIES).flatMap((entry) => Object.keys(entry));
  const sources = [...new Set([...entries, ...NAMES.map(sourceOf)])];
  const project = join(root, out, 'tsconfig.json');
  const types = join(root, out, 'types');
  const settings = {
    extends: join(root, 'tsconfig.json'),
    compilerOptions: {
      ...{ declaration: true, emitDeclarationOnly: true, noEmit: false },
      ...{ outDir: types, rootDir: root, stripInternal: true },
    },
    include: [],
    files: sources.map((source) => join(root, source)),
  };
  await mkdir(dirname(project), { recursive: true });
  await writeFile(project, JSON.stringify(settings));
  const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  await promisify(execFile)(process.execPath, [compiler, '--project', project], { cwd: root });
  await rm(project);
  const written = globSync('**/*.d.ts', { cwd: types });
  await Promise.all(written.map((file) => renameImports(types, file.replaceAll('\\', '/'))));
}

async function renameImports(types: string, file: string): Promise<void> {
  const text = await readFile(join(types, file), 'utf8');
  const renamed = text.replace(/'((?:#core|\.{1,2})\/[^']+)\.ts'/g, (_, path: string) => {
    if (!path.startsWith('#core/')) return `'${path}.js'`;
    const away = relative(dirname(file), path.replace('#core/', 'api/core/'));
    return `'${away.startsWith('.') ? away : `./${away}`}.js'`;
  });
  await writeFile(
    join(types, file),
    renamed.replace(/"((?:#core|\.{1,2})\/[^"]+)\.ts"/g, '"$1.js"'),
  );
}

if (import.meta.main) await buildPackage('.build/package');
