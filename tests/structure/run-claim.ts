import { isDeepStrictEqual } from 'node:util';
import { compileFunction } from 'node:vm';
import type { Claim } from './read-examples.ts';

/** Names that a claim may use, with what they mean. */
export type Scope = Readonly<Record<string, unknown>>;

type Pair = readonly [actual: unknown, wanted: unknown];

/** Runs a claim; nothing when it holds, else a sentence that says what came out instead. */
export async function runClaim(claim: Claim, scope: Scope): Promise<string | undefined> {
  const { setup, expression, expected } = claim;
  try {
    const body = `return (async () => {\n${setup}\nreturn [(${expression}\n), (${expected}\n)];\n})();`;
    const names = Object.keys(scope).filter((name) => name !== 'default');
    const run = compileFunction(body, names);
    const [actual, wanted] = await (run(...names.map((name) => scope[name])) as Promise<Pair>);
    if (agrees(actual, wanted)) return undefined;
    return `${expression} gives ${JSON.stringify(actual)} and not ${expected}`;
  } catch (error) {
    return `${expression} // => ${expected}: ${String(error)}`;
  }
}

/** Decimals from which a printed number is taken for a rounded one. */
const ROUNDED = 6;

/**
 * Whether two values are the same: objects deeply, numbers to all digits printed. A number with six
 * decimals or more was rounded to be printed; one with fewer must be met but for binary fractions.
 */
export function agrees(actual: unknown, expected: unknown): boolean {
  if (typeof actual === 'number' && typeof expected === 'number') return isNear(actual, expected);
  if (Array.isArray(actual) && Array.isArray(expected)) {
    return (
      actual.length === expected.length && expected.every((item, at) => agrees(actual[at], item))
    );
  }
  if (isRecord(actual) && isRecord(expected)) {
    const keys = Object.keys(expected);
    const isSame = isDeepStrictEqual(Object.keys(actual).toSorted(), keys.toSorted());
    return isSame && keys.every((key) => agrees(actual[key], expected[key]));
  }
  return isDeepStrictEqual(actual, expected);
}

function isNear(actual: number, expected: number): boolean {
  if (Object.is(actual, expected)) return true;
  const decimals = /\.(\d+)$/.exec(String(expected))?.[1]?.length ?? 0;
  const printed = decimals >= ROUNDED ? 0.5 * 10 ** -decimals : 0;
  return Math.abs(actual - expected) <= Math.max(printed, 1e-12 * Math.abs(expected));
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
