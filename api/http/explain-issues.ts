import type * as z from 'zod/mini';
import { FAULT_CODES, type FaultCode } from '#core/faults.ts';
import type { Fault, Path } from '#core/outcome.ts';
import { chooseBranch, isOfOtherName } from './choose-branch.ts';

type Issue = z.core.$ZodIssue;

const KIND_NAMES: Readonly<Record<string, string>> = {
  array: 'a list',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number',
  object: 'a group of parts',
  string: 'text',
};

/**
 * Puts what the schema library found into the closed codes, each with its place.
 * An unknown key is a fault of its own; a choice between forms is judged by the form that was meant.
 * A schema may name the code itself, by giving it as the message of its issue.
 *
 * @param input what the schema was asked about, of which the faults tell a little back
 */
export function explainIssues(issues: readonly Issue[], input: unknown): readonly Fault[] {
  return issues.flatMap((issue) => explain(issue, toPath(issue.path), input));
}

function explain(issue: Issue, path: Path, input: unknown): readonly Fault[] {
  const value = valueAt(input, path);
  const code = readCode(issue.message);
  if (value === '') return [{ code: 'empty', path }];
  switch (issue.code) {
    case 'unrecognized_keys':
      if (code !== undefined) return [{ code, path, expected: WAYS[code] ?? [] }];
      return issue.keys.map((key) => ({ code: 'unknown-key', path: [...path, key] }));
    case 'invalid_union':
      return explainUnion(issue, path, input);
    case 'invalid_type':
      return [explainType([issue.expected], path, value)];
    case 'invalid_value': {
      const expected = issue.values.map(String);
      return [
        value === undefined ? missing(path) : { ...found('not-one-of', path, value), expected },
      ];
    }
    case 'too_big': {
      const code = isSized(issue.origin) ? 'too-long' : 'too-large';
      return [{ ...found(code, path, sizeOf(value)), expected: Number(issue.maximum) }];
    }
    case 'too_small': {
      const code = isSized(issue.origin) ? 'too-short' : 'too-small';
      return [{ ...found(code, path, sizeOf(value)), expected: Number(issue.minimum) }];
    }
    default:
      return [{ ...found(code ?? 'bad-name', path, value), expected: issue.message }];
  }
}

function explainUnion(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  input: unknown,
): readonly Fault[] {
  const names = issue.errors.map((errors) => errors.find(isOfOtherName));
  if (names.length > 0 && names.every((name) => name !== undefined)) {
    return [explainNames(names, path, input)];
  }
  const branch = chooseBranch(issue.errors, valueAt(input, path));
  if (branch !== undefined) {
    return branch.flatMap((inner) => explain(inner, [...path, ...toPath(inner.path)], input));
  }
  const code = readCode(issue.message);
  const value = valueAt(input, path);
  if (code !== undefined) return [{ code, path, expected: WAYS[code] ?? [] }];
  const roots = issue.errors.flatMap((errors) => errors.filter(({ path }) => path.length === 0));
  const kinds = roots.flatMap((root) => (root.code === 'invalid_type' ? [root.expected] : []));
  return [explainType(kinds, path, value)];
}

/** A part that names the form, and names none. */
function explainNames(names: readonly Issue[], path: Path, input: unknown): Fault {
  const place = [...path, ...toPath(names[0]?.path ?? [])];
  const value = valueAt(input, place);
  const expected = names.flatMap((name) =>
    name.code === 'invalid_value' ? name.values.map(String) : [],
  );
  return value === undefined ? missing(place) : { ...found('not-one-of', place, value), expected };
}

/** What would have made a choice clear. */
const WAYS: Readonly<Partial<Record<FaultCode, readonly string[]>>> = {
  'target-unclear': ['width and height', 'size', 'bed', 'columns and rows'],
};

function explainType(kinds: readonly string[], path: Path, value: unknown): Fault {
  if (value === undefined) return missing(path);
  if (kinds.includes('int') && Number.isFinite(value)) return found('not-whole', path, value);
  const expected = [...new Set(kinds)].map((kind) => KIND_NAMES[kind] ?? kind);
  return { ...found('wrong-type', path, value), expected };
}

function missing(path: Path): Fault {
  return { code: 'missing', path };
}

function found(code: FaultCode, path: Path, value: unknown): Fault {
  return { code, path, received: tell(value) };
}

function tell(value: unknown): string | number {
  if (typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value)))
    return value;
  if (Array.isArray(value)) return 'list';
  return typeof value === 'object' && value !== null ? 'group' : String(value);
}

function isSized(origin: string): boolean {
  return origin === 'string' || origin === 'array';
}

/** Of a number itself, of a list or text how long it is. */
function sizeOf(value: unknown): unknown {
  return typeof value === 'string' || Array.isArray(value) ? value.length : value;
}

function readCode(message: string): FaultCode | undefined {
  return FAULT_CODES.find((code) => code === message);
}

function toPath(path: readonly PropertyKey[]): Path {
  return path.map((key) => (typeof key === 'symbol' ? String(key) : key));
}

function valueAt(input: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (part, key) => (typeof part === 'object' && part !== null ? Reflect.get(part, key) : undefined),
    input,
  );
}
