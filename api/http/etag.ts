/**
 * A strong validator of what is known before anything is reckoned: engine, address and canonical query.
 * The same engine and input give the same bytes, so these three name the bytes.
 *
 * @returns an entity tag of RFC 9110 §8.8.3: 128 bits of SHA-256 in quotes
 */
export async function makeEtag(identity: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(identity));
  const words = new DataView(digest, 0, 16);
  const hex = [0, 4, 8, 12].map((at) => words.getUint32(at).toString(16).padStart(8, '0'));
  return `"${hex.join('')}"`;
}

/**
 * Whether the caller holds these bytes already (RFC 9110 §13.1.2): a list of tags, weak ones too
 * since the comparison for If-None-Match is the weak one, or `*`.
 *
 * @example
 * matchesEtag('W/"a", "b"', '"b"') // => true
 * matchesEtag('*', '"b"') // => true
 * matchesEtag(null, '"b"') // => false
 */
export function matchesEtag(ifNoneMatch: string | null, etag: string): boolean {
  if (ifNoneMatch === null) return false;
  if (ifNoneMatch.trim() === '*') return true;
  // A tag may hold commas, so the list is read tag by tag and not split.
  return ifNoneMatch.match(/"[^"]*"/g)?.includes(etag) ?? false;
}
