/**
 * The query of an address, with its question mark; empty where it has none.
 *
 * @example
 * readSearch('/v1/plan?target.size=lap') // => '?target.size=lap'
 */
export function readSearch(address: string): string {
  const at = address.indexOf('?');
  return at < 0 ? '' : address.slice(at);
}
