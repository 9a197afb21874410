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

/** What RFC 9457 has of a problem, and every fault. */
export interface ProblemBody {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance?: string;
  readonly errors: readonly object[];
}

/**
 * An answer of RFC 9457 that tells every fault: place, sentence, what was found, what would be right.
 *
 * @param faults at least one
 */
export function answerProblem(faults: readonly Fault[], extras: ProblemExtras = {}): Response {
  return send(writeProblem(faults, extras), extras.headers);
}

/** A problem that lies in no part of the input: its kind, and what to do about it. */
export function writeKindOfProblem(
  kind: ProblemKind,
  { detail, headers }: Pick<ProblemExtras, 'headers'> & { readonly detail: string },
): Response {
  const [status, title] = PROBLEM_KINDS[kind];
  return send({ type: `/problems/${kind}`, title, status, detail, errors: [] }, headers);
}

/** The body of a problem, as it also stands among other answers. */
export function writeProblem(faults: readonly Fault[], extras: ProblemExtras = {}): ProblemBody {
  const codes = [...new Set(faults.map(({ code }) => code))];
  const [only] = codes;
  const kind: ProblemKind = codes.length === 1 && only !== undefined ? only : 'several-faults';
  const status = chooseStatus(codes);
  return {
    type: `/problems/${kind}`,
    title: PROBLEM_KINDS[kind][1],
    status,
    detail: sumUp(faults),
    ...(extras.instance === undefined ? {} : { instance: extras.instance }),
    errors: faults.slice(0, MOST_ERRORS).map((fault) => tellFault(fault, extras)),
  };
}

function send(body: ProblemBody, own: ProblemExtras['headers']): Response {
  const headers = own === undefined ? PROBLEM_HEADERS : { ...PROBLEM_HEADERS, ...own };
  return new Response(JSON.stringify(body), { status: body.status, headers });
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
