import type * as z from 'zod/mini';

type Issue = z.core.$ZodIssue;
type Branch = readonly Issue[];

/**
 * Of the forms that an input may have, the one that was meant: the only one whose kind fits, or that is
 * named by a part of the input, or among groups of parts the one that claims all the keys that any form
 * knows. None where that stays open.
 *
 * @param branches what keeps the input from being each form
 * @param value the input as it came
 */
export function chooseBranch(branches: readonly Branch[], value: unknown): Branch | undefined {
  const fitting = branches.filter((branch) => !branch.some((issue) => isOfWrongKind(issue, value)));
  if (fitting.length < 2) return fitting[0];
  const keys = typeof value === 'object' && value !== null ? Object.keys(value) : [];
  const named = findNamed(fitting, keys);
  if (named !== undefined) return named;
  const claims = fitting.map((branch) => {
    const foreign = new Set(branch.flatMap(listForeignKeys));
    return keys.filter((key) => !foreign.has(key));
  });
  const known = new Set(claims.flat());
  const whole = fitting.filter((_, at) => known.size > 0 && claims[at]?.length === known.size);
  return whole.length === 1 ? whole[0] : undefined;
}

/** The only form whose name the input has, where a part that all forms know names them. */
function findNamed(branches: readonly Branch[], keys: readonly string[]): Branch | undefined {
  for (const key of keys) {
    const named = branches.filter(
      (branch) => !branch.some((issue) => isOfOtherName(issue) && issue.path[0] === key),
    );
    const [only] = named;
    if (named.length === 1 && !only?.flatMap(listForeignKeys).includes(key)) return only;
  }
  return undefined;
}

function isOfWrongKind(issue: Issue, value: unknown): boolean {
  if (issue.code !== 'invalid_type' || issue.path.length > 0) return false;
  return !(issue.expected === 'int' && Number.isFinite(value));
}

/** Whether an issue is that a part which can have one value only, as the name of a form, has another. */
export function isOfOtherName(issue: Issue): boolean {
  return issue.code === 'invalid_value' && issue.path.length === 1 && issue.values.length === 1;
}

function listForeignKeys(issue: Issue): readonly string[] {
  return issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : [];
}
