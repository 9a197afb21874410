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

/**
 * Reads what a host page or an address hands over. Whatever has no place in a plan is told as a fault, once for all that
 * lies under one name; of a place that is given twice the first is taken; all the rest is taken as written. What it
 * means, who reckons the plan says.
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
  const fields =
    typeof given === 'string' ? [...new URLSearchParams(given)] : listFields(given, []);
  const draft: Record<string, string> = {};
  const faults: Fault[] = [];
  const judge = (path: string, value: string): Omit<Fault, 'path'> | undefined => {
    if (!keys.includes(path.split('.')[0] ?? '')) return { code: 'unknown-key' };
    if (value === '') return { code: 'empty' };
    if (value.length > LONGEST) return { code: 'too-long', expected: `${LONGEST}` };
    return Object.hasOwn(draft, path) ? { code: 'repeated-key' } : undefined;
  };
  for (const [name, received] of fields) {
    const fault = judge(name, received);
    if (fault === undefined) draft[name] = received;
    else {
      const path = name.split('.').slice(0, fault.code === 'unknown-key' ? 1 : undefined);
      faults.push({ ...fault, path, received });
    }
  }
  return { draft: draft as Kind, faults: tellOnce(faults) };
}

/**
 * Faults without those that say again what was said: one of each kind for each place.
 *
 * @example
 * tellOnce([{ code: 'empty', path: ['unit'] }, { code: 'empty', path: ['unit'] }]).length // => 1
 */
export function tellOnce(faults: readonly Fault[]): readonly Fault[] {
  const keyed = faults.map((fault) => [`${fault.code} ${fault.path.join('.')}`, fault] as const);
  return [...new Map(keyed).values()];
}

function listFields(value: unknown, path: readonly string[]): readonly [string, string][] {
  if (value === undefined || value === null) return [];
  if (typeof value !== 'object') return [[path.join('.'), String(value)]];
  return Object.entries(value).flatMap(([key, inner]) => listFields(inner, [...path, key]));
}
