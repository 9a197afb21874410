import * as v from 'valibot';
import { FAULT_CODES } from '#core/faults.ts';
import type { Fault, Outcome, Path } from '#core/outcome.ts';

/**
 * Checks that a value has the shape of a request, every plain number within its range.
 *
 * @returns the request, or every fault with its place; what lengths mean is for the core to judge.
 */
export function checkShape<Request>(
  schema: v.GenericSchema<unknown, Request>,
  value: unknown,
): Outcome<Request> {
  const { output, issues = [] } = v.safeParse(schema, value);
  const faults = [...issues.map(describeIssue), ...listUnknown(value, output, [])];
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: output as Request };
}

function describeIssue(issue: v.BaseIssue<unknown>): Fault {
  const path = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
  const { input, received } = issue;
  const isPlain = typeof input === 'string' || typeof input === 'number';
  return { ...findCode(issue, path), path, received: isPlain ? input : received };
}

/** A bound says its code and what it expects in its message; what a type means is said here. */
function findCode(
  { type, received, message }: v.BaseIssue<unknown>,
  path: Path,
): Pick<Fault, 'code' | 'expected'> {
  const [word, expected] = message.split(' ');
  const code = FAULT_CODES.find((known) => known === word);
  if (code !== undefined) return { code, ...(expected !== undefined && { expected }) };
  if (received === 'undefined') return { code: 'missing' };
  if (type === 'union' && path.join('') === 'target') return { code: 'target-unclear' };
  return { code: type === 'picklist' ? 'not-one-of' : 'wrong-type' };
}

/** What the schema passed over: keys that it does not know, at every depth. */
function listUnknown(value: unknown, known: unknown, path: Path): readonly Fault[] {
  if (typeof value !== 'object' || typeof known !== 'object' || !value || !known) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    Object.hasOwn(known, key)
      ? listUnknown(inner, Reflect.get(known, key), [...path, key])
      : [{ code: 'unknown-key', path: [...path, key] } as const],
  );
}
