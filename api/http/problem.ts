import type { Fault } from '#core/outcome.ts';
import { describeFault } from './describe-fault.ts';
import { PROBLEM_HEADERS } from './headers.ts';
import { chooseStatus, PROBLEM_KINDS, type ProblemKind } from './problem-kinds.ts';
import { writeParameter, writePointer } from './write-pointer.ts';

/** More than these are counted and not told one by one. */
const MOST_ERRORS = 50;
const LONGEST_ECHO = 40;

/** What a problem may say beside its faults. */
export interface ProblemExtras {
  /** The input came as a query, so each fault names its parameter too. */
  readonly fromQuery?: boolean;
  readonly instance?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/**
 * An answer of RFC 9457 that tells every fault: place, sentence, what was found, what would be right.
 *
 * @param faults at least one
 */
export function answerProblem(faults: readonly Fault[], extras: ProblemExtras = {}): Response {
  const codes = [...new Set(faults.map(({ code }) => code))];
  const [only] = codes;
  const kind: ProblemKind = codes.length === 1 && only !== undefined ? only : 'several-faults';
  const status = chooseStatus(codes);
  const body = {
    type: `/problems/${kind}`,
    title: PROBLEM_KINDS[kind][1],
    status,
    detail: sumUp(faults),
    ...(extras.instance === undefined ? {} : { instance: extras.instance }),
    errors: faults.slice(0, MOST_ERRORS).map((fault) => tellFault(fault, extras)),
  };
  const headers =
    extras.headers === undefined ? PROBLEM_HEADERS : { ...PROBLEM_HEADERS, ...extras.headers };
  return new Response(JSON.stringify(body), { status, headers });
}

function sumUp(faults: readonly Fault[]): string {
  const [first] = faults;
  if (faults.length === 1 && first !== undefined) return describeFault(first);
  const told = faults.length > MOST_ERRORS ? `the first ${MOST_ERRORS} stand` : 'each stands';
  return `${faults.length} things are wrong; ${told} in errors with what would make it right.`;
}

function tellFault(fault: Fault, { fromQuery }: ProblemExtras) {
  const { code, path, expected, received } = fault;
  return {
    code,
    pointer: writePointer(path),
    ...(fromQuery && path.length > 0 ? { parameter: writeParameter(path) } : {}),
    detail: describeFault(fault),
    ...(expected === undefined ? {} : { expected }),
    ...(received === undefined ? {} : { received: shorten(received) }),
  };
}

function shorten(received: string | number): string | number {
  if (typeof received === 'number' || received.length <= LONGEST_ECHO) return received;
  return `${received.slice(0, LONGEST_ECHO)}…`;
}
