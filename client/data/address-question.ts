import { SIZE_LIMITS } from '#core/limits.ts';
import { readQuery } from './read-query.ts';

/**
 * Where to ask, and what to post where the query is longer than an address may be.
 *
 * @example
 * addressQuestion('/v1/stash', 'unit=cm') // => { address: '/v1/stash?unit=cm' }
 */
export function addressQuestion(
  path: string,
  query: string,
): { readonly address: string; readonly init?: RequestInit } {
  if (query.length <= SIZE_LIMITS.query) return { address: `${path}?${query}` };
  const headers = { 'Content-Type': 'application/json' };
  const body = JSON.stringify(readQuery(query));
  return { address: path, init: { method: 'POST', headers, body } };
}
