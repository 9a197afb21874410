/** Where a bundled script fetches another one only when it is needed. */
const LATER = /\bimport\("(\.\/[\w-]+\.js)"\)/g;

/**
 * Lets what could not be fetched be fetched when it is asked for again. A browser keeps for as long as a page is open
 * that a script failed under its address, as HTML has it (module map), so that the second try is under another one.
 *
 * @param script as the bundler made it.
 *
 * @example
 * tryAgain('import("./text-de-A1.js")') // => 'import("./text-de-A1.js").catch(()=>import("./text-de-A1.js?"+Date.now()))'
 */
export function tryAgain(script: string): string {
  return script.replace(LATER, '$&.catch(()=>import("$1?"+Date.now()))');
}
