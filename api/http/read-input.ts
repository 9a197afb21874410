import { fail } from '#core/outcome.ts';
import { readBody } from './read-body.ts';
import { TEXT_KEYS } from './schemas/wire-schemas.ts';
import { type InputRead, unfoldQuery } from './unfold-query.ts';

/** Whether a request says its input in the address. */
export function readsQuery(method: string): boolean {
  return method === 'GET' || method === 'HEAD';
}

/**
 * The input of a request as JSON: of GET and HEAD the query, of POST and QUERY the body and nothing else.
 * Faults are those of {@link unfoldQuery} and {@link readBody}.
 */
export async function readInput(request: Request): Promise<InputRead> {
  const start = request.url.indexOf('?');
  const query = start < 0 ? '' : request.url.slice(start + 1);
  if (readsQuery(request.method)) return unfoldQuery(query, TEXT_KEYS);
  if (query === '') return readBody(request);
  const expected = 'the input in the body alone';
  return fail([{ code: 'malformed-query', path: [], expected, received: request.method }]);
}
