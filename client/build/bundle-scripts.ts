import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type BuildOptions, build, type Metafile } from 'esbuild';
import { sourceOf } from './join-views.ts';
import { tryAgain } from './try-again.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** One script as the bundler made it. */
export interface Script {
  /** Name in its folder. */
  readonly name: string;
  readonly contents: Uint8Array;
  /** Bytes after gzip. */
  readonly gzip: number;
  /** The source that it begins with; of what several scripts share there is none. */
  readonly entry: string | undefined;
  /** Names of the scripts that it loads at once. */
  readonly imports: readonly string[];
  /** Paths of all that went into it. */
  readonly inputs: readonly string[];
}

/** Bundles sources for the browser, smallest first of all; names have a digest of the contents in them. */
export async function bundleScripts(options: BuildOptions): Promise<readonly Script[]> {
  const { outputFiles, metafile } = await build({
    ...{ absWorkingDir: root, outdir: 'out', write: false, metafile: true },
    ...{ bundle: true, minify: true, charset: 'utf8', legalComments: 'none' },
    ...{ platform: 'browser', format: 'esm', target: 'es2022' },
    ...{ entryNames: '[name]-[hash]', chunkNames: '[name]-[hash]' },
    ...options,
  });
  return Object.entries(metafile?.outputs ?? {}).map(([path, output]) => {
    const found = outputFiles?.find((file) => file.path.endsWith(`/${path}`));
    const contents = new TextEncoder().encode(tryAgain(found?.text ?? ''));
    return {
      ...{ name: basename(path), contents, gzip: gzipSync(contents, { level: 9 }).length },
      ...{ entry: output.entryPoint && sourceOf(output.entryPoint), imports: listImports(output) },
      inputs: Object.keys(output.inputs).map(sourceOf),
    };
  });
}

function listImports({ imports }: Metafile['outputs'][string]): readonly string[] {
  const atOnce = imports.filter(({ kind }) => kind === 'import-statement');
  return atOnce.map(({ path }) => basename(path));
}
