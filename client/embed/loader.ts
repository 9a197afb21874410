import { bringElements } from './bring-elements.ts';
import { loadFile } from './load-file.ts';
import { VERSION } from './version.ts';

/** Put in by the build: the files of each element by its tag, the first of which registers it. */
declare const FILES: Readonly<Record<string, readonly string[]>>;
/** Put in by the build: where these lie, seen from this script. */
declare const FOLDER: string;
/** Put in by the build: what the bytes of each must come to; nothing where any version will do. */
declare const SIGNATURES: Readonly<Record<string, string>>;

/*
 * The one script of a page that holds elements. It may come early or late, more than once, as a module too; whatever
 * it needs lies where it came from itself.
 */
const script =
  document.currentScript ??
  [...document.scripts].find(({ src }) => /\/embed\/(v\d+|[\d.]+\/embed)\.js\b/.test(src));

if (script instanceof HTMLScriptElement) {
  const locate = (file: string) => new URL(`${FOLDER}${file}.js`, script.src).href;
  // The last is loaded first: what others need is signed before they ask for it.
  const load = (files: readonly string[]) =>
    Promise.all(files.toReversed().map((file) => loadFile(locate(file), SIGNATURES[file])));
  bringElements({ files: FILES, version: VERSION, load });
}
