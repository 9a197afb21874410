import * as v from 'valibot';
import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';
import type { AnyDraft, Draft } from './draft.ts';
import { REQUEST_KEYS } from './names.ts';

/** What could be taken from the host, and what could not, each with its place. */
export interface HostInput<Kind extends AnyDraft = Draft> {
  readonly draft: Kind;
  readonly faults: readonly Fault[];
}

/** Names are the longest values of a plan. */
const LONGEST = 40;

const fieldSchema = (keys: readonly string[]) =>
  v.object({
    path: v.pipe(
      v.string(),
      v.check((path) => keys.includes(path.split('.')[0] ?? ''), 'unknown-key'),
    ),
    value: v.pipe(
      v.string(),
      v.check((value) => value !== '', 'empty'),
      v.check((value) => value.length <= LONGEST, `too-long ${LONGEST}`),
    ),
  });

/**
 * Reads what a host page or an address hands over. Whatever has no place in a plan is told as a fault; all the rest is
 * taken as written. What it means, who reckons the plan says.
 *
 * @param given a flat query such as `target.width=40&target.height=50`, or an object of the API's contract.
 * @param keys the first parts of the paths that have a place.
 *
 * @example
 * readHostInput('target.size=lap').draft // => { 'target.size': 'lap' }
 * readHostInput({ target: { width: 40, height: '8 1/2' } }).draft // => { 'target.width': '40', 'target.height': '8 1/2' }
 * readHostInput('size=lap').faults // => [{ code: 'unknown-key', path: ['size'], received: 'lap' }]
 */
export function readHostInput<Kind extends AnyDraft = Draft>(
  given: unknown,
  keys: readonly string[] = REQUEST_KEYS,
): HostInput<Kind> {
  const schema = fieldSchema(keys);
  const fields =
    typeof given === 'string' ? [...new URLSearchParams(given)] : listFields(given, []);
  const draft: Record<string, string> = {};
  const faults = fields.flatMap(([path, value]): readonly Fault[] => {
    const { issues = [] } = v.safeParse(schema, { path, value });
    if (issues.length === 0) draft[path] = value;
    return issues.slice(0, 1).map(({ message }) => {
      const [code, expected] = message.split(' ');
      return {
        code: code as FaultCode,
        path: path.split('.'),
        received: value,
        ...(expected !== undefined && { expected }),
      };
    });
  });
  return { draft: draft as Kind, faults };
}

function listFields(value: unknown, path: readonly string[]): readonly [string, string][] {
  if (value === undefined || value === null) return [];
  if (typeof value !== 'object') return [[path.join('.'), String(value)]];
  return Object.entries(value).flatMap(([key, inner]) => listFields(inner, [...path, key]));
}
