/**
 * Whether a dotted path is one of the places, or lies under one.
 *
 * @example
 * isUnder('block.cut', ['block', 'unit']) // => true
 * isUnder('blocks', ['block']) // => false
 */
export function isUnder(path: string, places: readonly string[]): boolean {
  return places.some((place) => path === place || path.startsWith(`${place}.`));
}
