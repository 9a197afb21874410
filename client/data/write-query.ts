/** Anything that JSON can hold, as it comes from a draft. */
type Leaf = string | number | boolean | null | undefined;

/**
 * Writes a draft as a flat query of dotted paths. What is left out, or is an empty object, is left out.
 * It need not be canonical: the answer names the canonical one.
 *
 * @example
 * writeQuery({ target: { width: '8 1/2', height: 9 }, layers: [{ role: 'top' }] }) // => 'target.width=8%201%2F2&target.height=9&layers.0.role=top'
 */
export function writeQuery(draft: object): string {
  return listLeaves(draft, '')
    .map(([path, value]) => `${path}=${encodeURIComponent(value)}`)
    .join('&');
}

function listLeaves(value: object | Leaf, path: string): readonly [string, string][] {
  if (value === undefined || value === null) return [];
  if (typeof value !== 'object') return [[path, String(value)]];
  return Object.entries(value).flatMap(([key, inner]) =>
    listLeaves(inner, path === '' ? key : `${path}.${key}`),
  );
}
