import type { Path } from '#core/outcome.ts';

/** A longer key is cut short, so that a message never grows far beyond what was sent. */
const LONGEST_KEY = 100;

/**
 * A place in the input as JSON Pointer (RFC 6901).
 *
 * @example
 * writePointer(['layers', 0, 'a/b~c']) // => '/layers/0/a~1b~0c'
 * writePointer([]) // => ''
 */
export function writePointer(path: Path): string {
  return path
    .map((key) => `/${shorten(String(key)).replaceAll('~', '~0').replaceAll('/', '~1')}`)
    .join('');
}

/**
 * A place in the input as a person says it, which is also its name in a query.
 *
 * @example
 * writeParameter(['layers', 0, 'width']) // => 'layers.0.width'
 */
export function writeParameter(path: Path): string {
  return path.map((key) => shorten(String(key))).join('.');
}

function shorten(key: string): string {
  return key.length <= LONGEST_KEY ? key : `${key.slice(0, LONGEST_KEY)}…`;
}
