import type { Fault, Path } from '#core/outcome.ts';
import type { Endpoint, Resolved } from './endpoint.ts';
import { explainIssues } from './explain-issues.ts';
import { fillInput, pruneInput } from './prune-input.ts';

type Judge<Request, Understood extends Resolved> = Pick<
  Endpoint<Request, Understood>,
  'schema' | 'resolve'
>;

/**
 * Every fault of an input that its schema refused, told at once: those of its shape, and those that the
 * core finds in the parts that are sound. A fault in or around a place already named is left out.
 */
export function findFaults<Request, Understood extends Resolved>(
  { schema, resolve }: Judge<Request, Understood>,
  input: unknown,
): readonly Fault[] {
  const judged = schema().safeParse(input);
  if (judged.success) return listFaults(resolve(judged.data));
  const faults = explainIssues(judged.error.issues, input);
  const paths = faults.map(({ path }) => path);
  const pruned = pruneInput(input, paths);
  const rest = schema().safeParse(pruned);
  const again = rest.success ? rest : parseFilled(schema, pruned, faults);
  if (!again.success) return faults;
  return [...faults, ...leaveOut(paths, listFaults(resolve(again.data)))];
}

/** What is not whole without the parts at fault may be with a stand-in for those that may be text. */
function parseFilled<Request>(
  schema: Endpoint<Request, Resolved>['schema'],
  pruned: unknown,
  faults: readonly Fault[],
) {
  const known = faults.filter(({ code }) => code !== 'unknown-key').map(({ path }) => path);
  const filled = fillInput(pruned, known);
  const judged = schema().safeParse(filled);
  if (judged.success) return judged;
  const refused = explainIssues(judged.error.issues, filled).map(({ path }) => path);
  return schema().safeParse(pruneInput(filled, refused));
}

/**
 * Every fault of an input that could be read in part only: those of its reading, and those of the parts
 * that are sound. Of a part given twice one value is judged, whichever its reading took.
 *
 * @param read the faults of the reading, and what is sound; nothing else is told where nothing is
 */
export function findMore<Request, Understood extends Resolved>(
  endpoint: Judge<Request, Understood>,
  read: { readonly faults: readonly Fault[]; readonly sound?: unknown },
): readonly Fault[] {
  if (read.sound === undefined) return read.faults;
  const lost = read.faults.filter(({ code }) => code !== 'repeated-key').map(({ path }) => path);
  return [...read.faults, ...leaveOut(lost, findFaults(endpoint, read.sound))];
}

function leaveOut(named: readonly Path[], faults: readonly Fault[]): readonly Fault[] {
  return faults.filter((fault) => !named.some((path) => touches(path, fault.path)));
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
