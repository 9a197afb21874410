import type { Fault, Path } from '#core/outcome.ts';
import type { Endpoint, Resolved } from './endpoint.ts';
import { explainIssues } from './explain-issues.ts';
import { pruneInput } from './prune-input.ts';

/**
 * Every fault of an input that its schema refused, told at once: those of its shape, and those that the
 * core finds in the parts that are sound. A fault in or around a place already named is left out.
 */
export function findFaults<Request, Understood extends Resolved>(
  { schema, resolve }: Pick<Endpoint<Request, Understood>, 'schema' | 'resolve'>,
  input: unknown,
): readonly Fault[] {
  const judged = schema.safeParse(input);
  if (judged.success) return listFaults(resolve(judged.data));
  const faults = explainIssues(judged.error.issues, input);
  const pruned = pruneInput(
    input,
    faults.map(({ path }) => path),
  );
  const again = schema.safeParse(pruned);
  if (!again.success) return faults;
  const others = listFaults(resolve(again.data));
  const isNew = (other: Fault) => !faults.some(({ path }) => touches(path, other.path));
  return [...faults, ...others.filter(isNew)];
}

function listFaults(outcome: ReturnType<Endpoint<never, Resolved>['resolve']>): readonly Fault[] {
  return outcome.ok ? [] : outcome.faults;
}

/** Whether one place is the other, or lies in it, or stands in the same list. */
function touches(a: Path, b: Path): boolean {
  const depth = Math.min(a.length, b.length);
  const firstList = a.findIndex((key) => typeof key === 'number');
  const until = firstList < 0 ? depth : Math.min(depth, firstList);
  return a.slice(0, until).every((key, at) => key === b[at]);
}
