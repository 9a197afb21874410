import { SIZE_LIMITS } from '#core/limits.ts';
import { type Fault, fail, type Path, succeed } from '#core/outcome.ts';

/** Parameters in one query. */
const MOST_PARAMETERS = 1000;
const DECIMAL = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
const POSITION = /^(?:0|[1-9]\d{0,3})$/;
const KEY = /^[A-Za-z][A-Za-z0-9-]*$/;

type Leaf = string | number | boolean;
type Branch = Map<string, Leaf | Branch>;

/** The JSON of an input; where it is at fault as it was sent, beside its faults the JSON of all that is sound in it. */
export type InputRead =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly sound?: unknown };

/**
 * Turns a flat query of dotted paths into the JSON that would say the same.
 *
 * A value is a number only as a plain decimal, `-?(0|[1-9]\d*)(\.\d+)?`; `true` and `false` are truth
 * values; all else stays text, since a length may be text: `0x10`, `1e999` and `NaN` are refused where
 * they are wanted as numbers, and an empty value where it stands.
 *
 * Faults: `malformed-query` for broken percent-encoding, a broken name, a list with a hole, a name that
 * is both value and group, too long a query or too many parameters; `too-deep`; `repeated-key`, of which
 * the first value counts as sound. Of a query that is too long or has too many parameters nothing is read.
 *
 * @param query what stands after the `?`
 * @param textKeys last parts of names whose value is text whatever it looks like, such as `id`
 * @example
 * unfoldQuery('target.width=40&target.height=50&cuts.0=8%201/2', new Set()) // => { ok: true, value: { target: { width: 40, height: 50 }, cuts: ['8 1/2'] } }
 */
export function unfoldQuery(query: string, textKeys: ReadonlySet<string>): InputRead {
  if (query.length > SIZE_LIMITS.query) {
    const expected = `at most ${SIZE_LIMITS.query} characters`;
    return fail([{ code: 'malformed-query', path: [], expected, received: query.length }]);
  }
  const pairs = query.split('&').filter((pair) => pair !== '');
  if (pairs.length > MOST_PARAMETERS) {
    const expected = `at most ${MOST_PARAMETERS} parameters`;
    return fail([{ code: 'malformed-query', path: [], expected, received: pairs.length }]);
  }
  const root: Branch = new Map();
  const faults: Fault[] = [];
  for (const pair of pairs) {
    const fault = place(root, pair, textKeys);
    if (fault !== undefined) faults.push(fault);
  }
  const value = settle(root, [], faults);
  return faults.length > 0 ? { ok: false, faults, sound: value } : succeed(value);
}

function place(root: Branch, pair: string, textKeys: ReadonlySet<string>): Fault | undefined {
  const equals = pair.indexOf('=');
  const written = equals < 0 ? pair : pair.slice(0, equals);
  const name = decode(written);
  const text = decode(equals < 0 ? '' : pair.slice(equals + 1));
  if (name === undefined || text === undefined) {
    const path = name?.split('.') ?? written.split(/\.|%2e/i);
    return { code: 'malformed-query', path, expected: 'percent-encoded UTF-8' };
  }
  const path = name.split('.');
  const expected = 'names of letters and digits, and list positions from 0, joined by points';
  if (!path.every((key) => KEY.test(key) || POSITION.test(key))) {
    return { code: 'malformed-query', path, expected, received: name };
  }
  if (path.length > SIZE_LIMITS.depth) {
    return {
      code: 'too-deep',
      path: path.slice(0, SIZE_LIMITS.depth),
      expected: SIZE_LIMITS.depth,
    };
  }
  const last = path.at(-1) ?? '';
  return hang(root, path, textKeys.has(last) ? text : readValue(text));
}

function hang(root: Branch, path: readonly string[], value: Leaf): Fault | undefined {
  let branch = root;
  for (const key of path.slice(0, -1)) {
    const next = branch.get(key) ?? new Map();
    if (!(next instanceof Map)) return clash(path);
    branch.set(key, next);
    branch = next;
  }
  const last = path.at(-1) ?? '';
  const before = branch.get(last);
  if (before instanceof Map) return clash(path);
  if (before !== undefined) return { code: 'repeated-key', path };
  branch.set(last, value);
  return undefined;
}

function clash(path: readonly string[]): Fault {
  return { code: 'malformed-query', path, expected: 'either one value or a group of parts' };
}

/** A branch as JSON; a list with a hole is at fault and no part of what it would stand in. */
function settle(branch: Branch, path: Path, faults: Fault[]): unknown {
  const keys = [...branch.keys()];
  const isList = keys.length > 0 && keys.every((key) => POSITION.test(key));
  const at = (key: string) => [...path, isList ? Number(key) : key];
  const settled = keys.map((key) => {
    const value = branch.get(key);
    return [key, value instanceof Map ? settle(value, at(key), faults) : value] as const;
  });
  if (!isList && !keys.some((key) => POSITION.test(key))) {
    return Object.fromEntries(settled.filter(([, value]) => value !== undefined));
  }
  if (isList && keys.every((key) => Number(key) < keys.length)) {
    return settled.sort(([a], [b]) => Number(a) - Number(b)).map(([, value]) => value);
  }
  const expected = 'list positions from 0 with none left out';
  faults.push({ code: 'malformed-query', path, expected, received: keys.join(', ') });
  return undefined;
}

function readValue(text: string): Leaf {
  if (text === 'true') return true;
  if (text === 'false') return false;
  return DECIMAL.test(text) ? Number(text) : text;
}

function decode(text: string): string | undefined {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    return undefined;
  }
}
