import { FAULT_CODES } from '#core/faults.ts';
import type { BoundBatch } from '../endpoints/batch.ts';
import type { BoundEndpoint } from '../http/bind-endpoint.ts';
import { deriveSchemas } from './derive-schemas.ts';
import { describeBatch, describeBatchInput } from './describe-batch.ts';
import {
  type DescribedEndpoint,
  describeInput,
  describeOperations,
  nameRequest,
} from './describe-operations.ts';
import { ENDPOINT_WORDS } from './endpoint-words.ts';
import { HEADER_WORDS, PROBLEM_WORDS } from './response-words.ts';
import { runExamples } from './run-examples.ts';
import type { JsonSchema } from './schema-shapes.ts';

/** What the document is made from. */
export interface ApiSources {
  readonly version: string;
  readonly endpoints: readonly BoundEndpoint[];
  readonly batch: BoundBatch;
  /** TypeScript of the types that answers have. */
  readonly contract: string;
  /** Asks the service itself. */
  readonly ask: (path: string, init: RequestInit) => Response | Promise<Response>;
}

const SUMMARY =
  'Plans rag quilts: from a wish to cloth, thread, weight, hours and work. It keeps nothing, asks for no key, and gives equal input equal bytes. Lengths are in `unit` or text with a unit of its own; percentages are percent numbers. What no schema can say (a seam that leaves nothing of the block, a roll narrower than a piece) is answered by a problem of status 422, all faults at once.';

/**
 * The service as OpenAPI 3.1, from the tables that run it: endpoints, schemas, contract, fault codes.
 * Each example is asked, and the answer shown is the one it got.
 */
export async function describeApi(sources: ApiSources): Promise<JsonSchema> {
  const described = await Promise.all(sources.endpoints.map((one) => describe(one, sources)));
  return {
    openapi: '3.1.1',
    info: {
      title: 'Ragbloom',
      version: sources.version,
      description: SUMMARY,
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/' }],
    security: [],
    tags: [
      { name: 'Calculations', description: 'What is asked in figures and answered in figures.' },
      { name: 'Pictures', description: 'The same drawn to scale, without script.' },
      { name: 'Service', description: 'What the service says of itself.' },
    ],
    paths: {
      ...Object.fromEntries(described.map((one) => [one.endpoint.path, describeOperations(one)])),
      [sources.batch.path]: await describeBatch(sources.batch, sources.ask),
      '/health': describeHealth(),
    },
    components: {
      schemas: {
        ...describeRequests(described),
        BatchRequest: describeBatchInput(
          sources.batch,
          sources.endpoints.map(({ path }) => path),
        ),
        ...describeAnswers(described, sources.contract),
      },
      responses: PROBLEM_WORDS,
      headers: HEADER_WORDS,
    },
  };
}

async function describe(endpoint: BoundEndpoint, sources: ApiSources): Promise<DescribedEndpoint> {
  const words = ENDPOINT_WORDS[endpoint.path];
  if (words === undefined) throw new Error(`No words are there for ${endpoint.path}.`);
  return { endpoint, words, answers: await runExamples(endpoint, words, sources.ask) };
}

function describeRequests(described: readonly DescribedEndpoint[]): JsonSchema {
  return Object.fromEntries(
    described.map(({ endpoint }) => [nameRequest(endpoint.path), describeInput(endpoint.schema())]),
  );
}

function describeAnswers(described: readonly DescribedEndpoint[], contract: string): JsonSchema {
  const roots = described.flatMap(({ words }) => words.answer ?? []);
  return { ...deriveSchemas(contract, [...roots, 'BatchAnswer']), Problem: describeProblem() };
}

function describeProblem(): JsonSchema {
  const text = { type: 'string' };
  const fault = {
    type: 'object',
    properties: {
      code: { enum: FAULT_CODES },
      pointer: { ...text, description: 'Place in the input as JSON Pointer' },
      parameter: { ...text, description: 'The same as a name in the query' },
      detail: { ...text, description: 'What is wrong and what would make it right' },
      expected: { description: 'What would have been right' },
      received: { description: 'What was found', type: ['string', 'number'] },
    },
    required: ['code', 'pointer', 'detail'],
  };
  return {
    type: 'object',
    description: 'A problem of RFC 9457 that tells every fault of the request at once.',
    properties: {
      type: { ...text, format: 'uri-reference', description: 'Leads to a page on this kind' },
      title: text,
      status: { type: 'integer' },
      detail: text,
      instance: { ...text, format: 'uri-reference' },
      errors: { type: 'array', items: fault },
    },
    required: ['type', 'title', 'status', 'detail', 'errors'],
  };
}

function describeHealth(): JsonSchema {
  const schema = {
    type: 'object',
    properties: { ok: { const: true }, version: { type: 'string' } },
    required: ['ok', 'version'],
  };
  return {
    get: {
      operationId: 'getHealth',
      summary: 'Whether the service stands, and which version it is.',
      tags: ['Service'],
      responses: {
        200: { description: 'It stands.', content: { 'application/json': { schema } } },
        405: { $ref: '#/components/responses/Problem405' },
      },
    },
  };
}
