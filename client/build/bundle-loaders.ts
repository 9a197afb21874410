import type { ElementBundle } from './bundle-elements.ts';
import { bundleScripts, type Script } from './bundle-scripts.ts';
import { type Signatures, signFile } from './sign-files.ts';
import { tightenScript } from './tighten-script.ts';

/** The script that brings elements, twice. */
export interface Loaders {
  /** Beside the folder of its version: it brings the newest one. */
  readonly stable: Script;
  /** In that folder: it brings this one for ever, and lets no file run that is not as it was made. */
  readonly pinned: Script;
}

/**
 * Bundles the script that brings elements.
 *
 * @param version names the folder that the files of the elements lie in.
 */
export async function bundleLoaders(bundle: ElementBundle, version: string): Promise<Loaders> {
  const { scripts, elements } = bundle;
  const early = scripts.filter(({ name }) => elements.some(({ first }) => first.includes(name)));
  const signatures = early.map(({ name, contents }) => [bare(name), signFile(contents)]);
  const [stable, pinned] = await Promise.all([
    bundleLoader(bundle, `${version}/`, {}),
    bundleLoader(bundle, './', Object.fromEntries(signatures)),
  ]);
  return { stable, pinned };
}

async function bundleLoader(
  { elements }: ElementBundle,
  folder: string,
  signatures: Signatures,
): Promise<Script> {
  const files = elements.map(({ name, first }) => [`ragbloom-${name}`, first.map(bare)]);
  const [loader] = await bundleScripts({
    entryPoints: ['client/embed/loader.ts'],
    format: 'iife',
    define: {
      FILES: JSON.stringify(Object.fromEntries(files)),
      FOLDER: JSON.stringify(folder),
      SIGNATURES: JSON.stringify(signatures),
    },
  });
  if (loader === undefined) throw new Error('The bundler gave no loader.');
  return tightenScript(loader);
}

function bare(file: string): string {
  return file.replace(/\.js$/, '');
}
