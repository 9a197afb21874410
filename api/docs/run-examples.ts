import type { ApiSources } from './describe-api.ts';
import type { ExampleAnswers } from './describe-operations.ts';
import type { EndpointWords } from './endpoint-words.ts';

/**
 * Asks every example of an endpoint.
 *
 * @returns what each was answered, parsed where it is JSON
 * @throws where one is not answered with 200: a document must not show what does not work
 */
export async function runExamples(
  endpoint: { readonly path: string },
  words: EndpointWords,
  ask: ApiSources['ask'],
): Promise<ExampleAnswers> {
  const asked = Object.entries(words.examples).map(async ([name, { input }]) => {
    const answer = await ask(endpoint.path, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(input),
    });
    const text = await answer.text();
    if (answer.status !== 200) throw new Error(`Example ${name} of ${endpoint.path}: ${text}`);
    const isJson = answer.headers.get('Content-Type') === 'application/json';
    return [name, isJson ? (JSON.parse(text) as unknown) : text] as const;
  });
  return Object.fromEntries(await Promise.all(asked));
}
