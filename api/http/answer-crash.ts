import { answerProblem } from './problem.ts';

/**
 * Answers what should never happen: a bug. The caller learns an id and nothing of the inside;
 * the log of the runtime has the same id and all of it.
 */
export function answerCrash(error: unknown): Response {
  const id = crypto.randomUUID();
  console.error(id, error);
  return answerProblem([{ code: 'internal', path: [] }], { instance: `urn:uuid:${id}` });
}
