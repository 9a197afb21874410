import type { BoundBatch } from '../endpoints/batch.ts';
import type { ApiSources } from './describe-api.ts';
import { describeInput, nameRequest } from './describe-operations.ts';
import { runExamples } from './run-examples.ts';
import type { JsonSchema } from './schema-shapes.ts';

/** A batch that the documents show. */
export const EXAMPLE = {
  summary: 'A roll to be cut, and a plan that cannot be',
  input: {
    requests: [
      {
        path: '/v1/yardage',
        input: {
          fabrics: [
            { id: 'Dots', width: 42, pieces: [{ id: 'a', width: 8, length: 8, count: 20 }] },
          ],
        },
      },
      { path: '/v1/plan', input: { target: { size: 'throw' }, block: { cut: 4, seam: 2 } } },
    ],
  },
};

/**
 * The batch as an operation. Its own schema takes any group as an input, since each is judged by
 * itself; the document says which input goes with which address.
 */
export async function describeBatch(
  batch: BoundBatch,
  ask: ApiSources['ask'],
): Promise<JsonSchema> {
  const answers = await runExamples(batch, { examples: { mixed: EXAMPLE } }, ask);
  const { summary, input } = EXAMPLE;
  const problems = ['400', '405', '413', '415', '422', '429', '500'];
  return {
    post: {
      operationId: 'postBatch',
      summary: batch.summary,
      description:
        'What is wrong with one request is told in its place and harms no other. Each request has a cost in points, about a tenth of a millisecond each; a batch whose costs come to more than 500 is refused as a whole, before anything is reckoned.',
      tags: ['Calculations'],
      requestBody: {
        required: true,
        content: {
          'application/json': {
            schema: { $ref: '#/components/schemas/BatchRequest' },
            examples: { mixed: { summary, value: input } },
          },
        },
      },
      responses: {
        200: {
          description: 'An answer or a problem for each request, in the same order.',
          content: {
            'application/json': {
              schema: { $ref: '#/components/schemas/BatchAnswer' },
              examples: { mixed: { summary, value: answers['mixed'] } },
            },
          },
        },
        ...Object.fromEntries(
          problems.map((status) => [status, { $ref: `#/components/responses/Problem${status}` }]),
        ),
      },
    },
  };
}

/** The input of a batch, each address with the input that is its own. */
export function describeBatchInput(batch: BoundBatch, paths: readonly string[]): JsonSchema {
  const schema = describeInput(batch.schema());
  const { requests } = schema.properties ?? {};
  const anyOf = paths.map((path) => ({
    type: 'object',
    properties: {
      path: { const: path },
      input: { $ref: `#/components/schemas/${nameRequest(path)}` },
    },
    required: ['path', 'input'],
    additionalProperties: false,
  }));
  return { ...schema, properties: { requests: { ...requests, items: { anyOf } } } };
}
