/** One fault as the service tells it. */
export interface ToldFault {
  readonly code: string;
  /** JSON Pointer into the input. */
  readonly pointer: string;
  /** The same as a name in the query, where the input came as one. */
  readonly parameter?: string;
  /** What is wrong, with the numbers, and what would make it right. */
  readonly detail: string;
  readonly expected?: unknown;
  readonly received?: string | number;
}

/** A problem of RFC 9457 as the service answers it. */
export interface Problem {
  /** Where the kind of problem is explained, from the root of the service. */
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance?: string;
  readonly errors: readonly ToldFault[];
}

/** The service answered, and it was no: `problem` says what is wrong and `problem.errors` where. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.detail);
    this.problem = problem;
  }
}

/** No answer came that could be read: the network failed, time ran out, or somebody else answered. */
export class UnreachableError extends Error {
  override readonly name = 'UnreachableError';
}

/**
 * Reads an answer that is not 200.
 *
 * @returns the problem as an error, or that nobody who speaks of problems was reached
 */
export async function readFailure(response: Response): Promise<ProblemError | UnreachableError> {
  const type = response.headers.get('Content-Type') ?? '';
  if (type.startsWith('application/problem+json')) {
    const problem: unknown = await response.json().catch(() => undefined);
    if (isProblem(problem)) return new ProblemError(problem);
  }
  return new UnreachableError(`The answer was ${response.status} and told no problem.`);
}

function isProblem(value: unknown): value is Problem {
  return (
    typeof value === 'object' &&
    value !== null &&
    'detail' in value &&
    typeof value.detail === 'string' &&
    'status' in value &&
    typeof value.status === 'number' &&
    'errors' in value &&
    Array.isArray(value.errors)
  );
}
