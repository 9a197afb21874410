/** Where a bundled script fetches another one only when it is needed. */
const LATER = /\bimport\("(\.\/[\w-]+\.js)"\)/g;

/** Once for all that a script fetches: a name that no source has. */
const AGAIN = 'function $again(a){return import(a).catch(()=>import(a+"?"+Date.now()))}';

/**
 * Lets what could not be fetched be fetched when it is asked for again. A browser keeps for as long as a page is open
 * that a script failed under its address, as HTML has it (module map), so that the second try is under another one.
 *
 * @param script as the bundler made it.
 *
 * @example
 * tryAgain('a(import("./text-de-A1.js"))').startsWith('a($again("./text-de-A1.js"))') // => true
 * tryAgain('a()') // => 'a()'
 */
export function tryAgain(script: string): string {
  const tried = script.replace(LATER, '$$again("$1")');
  return tried === script ? script : `${tried}\n${AGAIN}`;
}
