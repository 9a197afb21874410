import * as v from 'valibot';
import type { PlanRequest } from '#core/contract.ts';
import type { FaultCode } from '#core/faults.ts';
import type { Fault, Outcome, Path } from '#core/outcome.ts';
import { planRequestSchema } from './plan-request-schema.ts';

/** What a valibot issue means in the one vocabulary of faults. */
const CODES: Readonly<Record<string, FaultCode>> = {
  strict_object: 'unknown-key',
  picklist: 'not-one-of',
  integer: 'not-whole',
  min_value: 'too-small',
  max_value: 'too-large',
  min_length: 'too-short',
  max_length: 'too-long',
  regex: 'bad-name',
};

/**
 * Checks that a value has the shape of a request, every plain number within its range.
 *
 * @returns the request, or every fault with its place; what lengths mean is for the core to judge.
 */
export function checkRequest(value: unknown): Outcome<PlanRequest> {
  const result = v.safeParse(planRequestSchema, value);
  if (result.success) return { ok: true, value: result.output };
  return { ok: false, faults: result.issues.map(describeIssue) };
}

function describeIssue(issue: v.BaseIssue<unknown>): Fault {
  const path = listKeys(issue);
  const { requirement, received, input } = issue;
  const isPlain = typeof input === 'string' || typeof input === 'number';
  return {
    code: findCode(issue, path),
    path,
    ...(typeof requirement === 'number' && { expected: requirement }),
    received: isPlain ? input : received,
  };
}

function findCode({ type, received }: v.BaseIssue<unknown>, path: Path): FaultCode {
  if (received === 'undefined') return 'missing';
  if (type === 'union' && path.length === 1 && path[0] === 'target') return 'target-unclear';
  return CODES[type] ?? 'wrong-type';
}

function listKeys({ path }: v.BaseIssue<unknown>): Path {
  return (path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
}
