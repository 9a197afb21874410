import * as z from 'zod';
import type { BoundEndpoint } from '../http/bind-endpoint.ts';
import type { EndpointWords } from './endpoint-words.ts';
import { flattenParameters } from './flatten-parameters.ts';
import type { JsonSchema } from './schema-shapes.ts';

/** Answers that an example really got, as parsed JSON or as text, by its name. */
export type ExampleAnswers = Readonly<Record<string, unknown>>;

/** One endpoint and all that is known of it. */
export interface DescribedEndpoint {
  readonly endpoint: BoundEndpoint;
  readonly words: EndpointWords;
  readonly answers: ExampleAnswers;
}

/**
 * The input of an endpoint as JSON Schema, by the schema library's own converter: what it cannot say
 * is an error and not an empty schema.
 */
export function describeInput(schema: z.core.$ZodType): JsonSchema {
  const options = { io: 'input', target: 'draft-2020-12', unrepresentable: 'throw' } as const;
  // As plain JSON: what the converter hands out is more than data.
  const { $schema: _, ...plain } = JSON.parse(JSON.stringify(z.toJSONSchema(schema, options)));
  return plain;
}

/** The operations of one address: GET with a flat query, POST with the same input as a body. */
export function describeOperations(described: DescribedEndpoint): JsonSchema {
  const { endpoint, words } = described;
  const name = nameOperation(endpoint.path);
  const shared = { summary: endpoint.summary, tags: [chooseTag(endpoint.path)] };
  const content = {
    'application/json': {
      schema: { $ref: `#/components/schemas/${nameRequest(endpoint.path)}` },
      examples: Object.fromEntries(
        Object.entries(words.examples).map(([key, { summary, input }]) => [
          key,
          { summary, value: input },
        ]),
      ),
    },
  };
  return {
    get: {
      operationId: `get${name}`,
      ...shared,
      description:
        'The input as a flat query of dotted names. Lists count from 0; each is shown here by its first entry. HEAD is answered alike, without the body.',
      parameters: flattenParameters(describeInput(endpoint.schema())),
      responses: describeResponses(described, ['304', '400', '405', '422', '429', '500']),
    },
    post: {
      operationId: `post${name}`,
      ...shared,
      description:
        'The input as one JSON object. The method QUERY (RFC 10008) takes the same body, and its answer may be cached.',
      requestBody: { required: true, content },
      responses: describeResponses(described, ['400', '405', '413', '415', '422', '429', '500']),
    },
  };
}

/** Name in the components of the input that an address takes, such as `WashShrinkageRequest`. */
export function nameRequest(path: string): string {
  return `${nameOperation(path)}Request`;
}

function describeResponses(described: DescribedEndpoint, statuses: readonly string[]): JsonSchema {
  const others = statuses.map((status) => [
    status,
    { $ref: `#/components/responses/${status === '304' ? 'NotModified' : `Problem${status}`}` },
  ]);
  return { 200: describeAnswer(described), ...Object.fromEntries(others) };
}

function describeAnswer({ endpoint, words, answers }: DescribedEndpoint): JsonSchema {
  const { answer } = words;
  const schema =
    answer === undefined ? { type: 'string' } : { $ref: `#/components/schemas/${answer}` };
  const shown = answer === undefined ? {} : { examples: showAnswers(words, answers) };
  const names = ['Cache-Control', 'Content-Location', 'ETag', 'RateLimit-Policy'];
  return {
    description: 'The answer: the same engine and input give the same bytes.',
    headers: Object.fromEntries(
      names.map((name) => [name, { $ref: `#/components/headers/${name}` }]),
    ),
    content: { [endpoint.mediaType]: { schema, ...shown } },
  };
}

function showAnswers({ examples }: EndpointWords, answers: ExampleAnswers): JsonSchema {
  const shown = Object.entries(examples).map(([key, { summary }]) => [
    key,
    { summary, value: answers[key] },
  ]);
  return Object.fromEntries(shown);
}

function nameOperation(path: string): string {
  const words = path.replace(/^\/v\d+\//, '').split(/[^A-Za-z0-9]+/);
  return words.map((word) => `${word.charAt(0).toUpperCase()}${word.slice(1)}`).join('');
}

function chooseTag(path: string): string {
  return path.endsWith('.svg') ? 'Pictures' : 'Calculations';
}
