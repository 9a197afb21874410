import type { Handler } from 'hono';
import { OPTIONS_HEADERS } from './headers.ts';
import { answerProblem } from './problem.ts';

/**
 * Answers what no handler of an address took: OPTIONS with what is possible, any other method with 405.
 *
 * @param methods what the address takes, without OPTIONS
 */
export function allowMethods(methods: readonly string[]): Handler {
  const allow = [...methods, 'OPTIONS'].join(', ');
  // RFC 10008 has a server tell which bodies QUERY may carry.
  const accepts = methods.includes('QUERY') ? { 'Accept-Query': 'application/json' } : {};
  const options = Object.freeze({
    ...OPTIONS_HEADERS,
    ...accepts,
    Allow: allow,
    'Access-Control-Allow-Methods': allow,
  });
  return ({ req }) =>
    req.method === 'OPTIONS'
      ? new Response(null, { status: 204, headers: options })
      : answerProblem([{ code: 'wrong-method', path: [], expected: allow, received: req.method }], {
          headers: { ...accepts, Allow: allow },
        });
}
