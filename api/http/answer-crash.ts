import { PROBLEM_HEADERS } from './headers.ts';
import { type ProblemBody, writeProblem } from './problem.ts';

/**
 * Answers what should never happen: a bug. The caller learns an id and nothing of the inside;
 * the log of the runtime has the same id and all of it.
 */
export function answerCrash(error: unknown): Response {
  const body = describeCrash(error);
  return new Response(JSON.stringify(body), { status: body.status, headers: PROBLEM_HEADERS });
}

/** The body of that answer, as it also stands among other answers; the log is written here. */
export function describeCrash(error: unknown): ProblemBody {
  const id = crypto.randomUUID();
  console.error(id, error);
  return writeProblem([{ code: 'internal', path: [] }], { instance: `urn:uuid:${id}` });
}
