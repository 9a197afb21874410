import type { JsonSchema } from './schema-shapes.ts';

const text = (description: string): JsonSchema => ({ description, schema: { type: 'string' } });

/** Headers of answers, for the documents. */
export const HEADER_WORDS: Readonly<Record<string, JsonSchema>> = {
  Allow: text('The methods that this address takes.'),
  'Cache-Control': text('How long any cache may keep the answer.'),
  'Content-Location': text('The canonical address, where the request came by another.'),
  ETag: text('A strong validator, known before anything is reckoned; send it as If-None-Match.'),
  'RateLimit-Policy': text(
    'How many requests are answered in how many seconds, where that is limited.',
  ),
  'Retry-After': text('Seconds to wait.'),
};

const problem = (description: string, ...headers: readonly string[]): JsonSchema => ({
  description,
  ...(headers.length > 0 && {
    headers: Object.fromEntries(
      headers.map((name) => [name, { $ref: `#/components/headers/${name}` }]),
    ),
  }),
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
});

/** Answers other than 200, by the name they have among the components. */
export const PROBLEM_WORDS: Readonly<Record<string, JsonSchema>> = {
  NotModified: {
    description: 'The caller holds these bytes already; nothing was reckoned.',
    headers: { ETag: { $ref: '#/components/headers/ETag' } },
  },
  Problem400: problem('The message cannot be read.'),
  Problem405: problem('The address does not take this method.', 'Allow'),
  Problem413: problem('The body is larger than any input needs to be.'),
  Problem415: problem('The body is not sent as JSON.'),
  Problem422: problem('The input can be read, but something in it is wrong or impossible.'),
  Problem429: problem('Too many requests in too short a time.', 'Retry-After', 'RateLimit-Policy'),
  Problem500: problem('The service failed; nothing in the input should bring this about.'),
};
