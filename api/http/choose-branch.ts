import type * as z from 'zod/mini';

type Issue = z.core.$ZodIssue;
type Branch = readonly Issue[];

/**
 * Of the forms that an input may have, the one that was meant: the only one whose kind fits, or among
 * groups of parts the one that claims all the keys that any form knows. None where that stays open.
 *
 * @param branches what keeps the input from being each form
 * @param value the input as it came
 */
export function chooseBranch(branches: readonly Branch[], value: unknown): Branch | undefined {
  const fitting = branches.filter((branch) => !branch.some((issue) => isOfWrongKind(issue, value)));
  if (fitting.length < 2) return fitting[0];
  const keys = typeof value === 'object' && value !== null ? Object.keys(value) : [];
  const claims = fitting.map((branch) => {
    const foreign = new Set(branch.flatMap(listForeignKeys));
    return keys.filter((key) => !foreign.has(key));
  });
  const known = new Set(claims.flat());
  const whole = fitting.filter((_, at) => known.size > 0 && claims[at]?.length === known.size);
  return whole.length === 1 ? whole[0] : undefined;
}

function isOfWrongKind(issue: Issue, value: unknown): boolean {
  if (issue.code !== 'invalid_type' || issue.path.length > 0) return false;
  return !(issue.expected === 'int' && Number.isFinite(value));
}

function listForeignKeys(issue: Issue): readonly string[] {
  return issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : [];
}
