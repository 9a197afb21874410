/** Headers for the files whose path a pattern fits. */
export interface HeaderRule {
  /** A path from the root; `*` at its end stands for anything, `:name` for one part of a path. */
  readonly pattern: string;
  readonly headers: readonly (readonly [name: string, value: string])[];
}

/**
 * Reads a `_headers` file, by which the edge is told what to send along with files: a pattern at the
 * start of a line, and below it the headers, each on an indented line.
 *
 * @throws where a line is neither, so that no header is lost by a slip
 * @example
 * readHeaderRules('/*\n  X-A: 1\n') // => [{ pattern: '/*', headers: [['X-A', '1']] }]
 */
export function readHeaderRules(text: string): readonly HeaderRule[] {
  const rules: { pattern: string; headers: [string, string][] }[] = [];
  for (const line of text.split('\n')) {
    if (line.trim() === '' || line.startsWith('#')) continue;
    const header = /^\s+([\w-]+):\s*(.+?)\s*$/.exec(line);
    const rule = rules.at(-1);
    if (line.startsWith('/')) rules.push({ pattern: line.trim(), headers: [] });
    else if (header !== null && rule !== undefined) {
      rule.headers.push([header[1] ?? '', header[2] ?? '']);
    } else throw new Error(`_headers has a line that is neither path nor header: ${line}`);
  }
  return rules;
}

/** What is sent along with one path, by every rule that fits it. */
export function chooseHeaders(rules: readonly HeaderRule[], path: string): HeaderRule['headers'] {
  const fits = (pattern: string) => {
    const parts = pattern.replace(/[.+?^${}()|[\]\\]/g, '\\$&').replace(/:\w+/g, '[^/]+');
    return new RegExp(`^${parts.replace(/\*$/, '.*')}$`).test(path);
  };
  return rules.filter(({ pattern }) => fits(pattern)).flatMap(({ headers }) => headers);
}
