import { SIZE_LIMITS } from '#core/limits.ts';
import type { Fault, Path } from '#core/outcome.ts';

/** One object or list that is open where the scan stands. */
interface Open {
  /** Keys seen so far; absent in a list. */
  readonly keys: Set<string> | undefined;
  /** Where in it the scan stands. */
  at: string | number;
}

// A text with no end runs to the end of all: else each quote in it would start a search of its own.
const TOKEN = /"(?:[^"\\]|\\[\s\S])*(?:"|\\?$)|[{}[\],]/g;
/** Enough for a person to see what is wrong. */
const MOST_FAULTS = 50;

/**
 * Looks over JSON text once before it is parsed, for what parsing hides or pays for dearly: nesting
 * deeper than the limit (`too-deep`, and the scan stops there), and a key given twice in one object,
 * of which a parser keeps the last in silence (`repeated-key`). Text that is no JSON is left to the parser.
 *
 * @example
 * scanJson('{"a":1,"\\u0061":2}') // => [{ code: 'repeated-key', path: ['a'] }]
 */
export function scanJson(text: string): readonly Fault[] {
  const open: Open[] = [];
  const faults: Fault[] = [];
  for (const { 0: token, index } of text.matchAll(TOKEN)) {
    const inner = open.at(-1);
    if (token === '{' || token === '[') {
      if (open.length === SIZE_LIMITS.depth) {
        return [{ code: 'too-deep', path: pathOf(open), expected: SIZE_LIMITS.depth }];
      }
      open.push({ keys: token === '{' ? new Set() : undefined, at: token === '{' ? '' : 0 });
    } else if (token === '}' || token === ']') open.pop();
    else if (token === ',') step(inner);
    else if (inner?.keys !== undefined && isKey(text, index + token.length)) {
      inner.at = readKey(token);
      if (inner.keys.has(inner.at) && faults.length < MOST_FAULTS) {
        faults.push({ code: 'repeated-key', path: pathOf(open) });
      }
      inner.keys.add(inner.at);
    }
  }
  return faults;
}

function step(inner: Open | undefined): void {
  if (typeof inner?.at === 'number') inner.at += 1;
}

function pathOf(open: readonly Open[]): Path {
  return open.map(({ at }) => at);
}

function isKey(text: string, end: number): boolean {
  let at = end;
  while (/\s/.test(text.charAt(at))) at += 1;
  return text.charAt(at) === ':';
}

function readKey(token: string): string {
  if (!token.includes('\\')) return token.slice(1, -1);
  try {
    return String(JSON.parse(token));
  } catch {
    return token;
  }
}
