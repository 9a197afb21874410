import type { Links } from './contract.ts';
import { SIZE_LIMITS } from './limits.ts';

/** Where one kind of answer can be had: paths from the root of the host. */
export interface Places {
  readonly self: string;
  readonly image?: string;
}

/**
 * The addresses of an answer: each path with the canonical query behind it.
 *
 * A query longer than the service reads is left off: `self` then names the endpoint, which takes the
 * same input as a body, and there is no address for the image.
 *
 * @param query canonical query, without its question mark
 * @example
 * writeLinks('a=1', { self: '/v1/plan' }) // => { self: '/v1/plan?a=1' }
 */
export function writeLinks(query: string, { self, image }: Places): Links {
  const isAskable = query.length <= SIZE_LIMITS.query;
  return {
    self: isAskable ? `${self}?${query}` : self,
    ...(isAskable && image !== undefined && { image: `${image}?${query}` }),
  };
}
