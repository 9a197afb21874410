/** One line of an example that says what comes out. */
export type Claim = {
  /** Statements before it, each ended by a semicolon. */
  readonly setup: string;
  readonly expression: string;
  readonly expected: string;
};

/** What stands under one `@example`. */
export type Example = { readonly text: string; readonly claims: readonly Claim[] };

/** The examples in the docblocks of a source file, in their order. */
export function readExamples(source: string): readonly Example[] {
  const blocks = source.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
  return blocks.flatMap((block) => {
    const lines = block
      .replace(/^\/\*\*|\*\/$/g, '')
      .split('\n')
      .map((line) => line.replace(/^\s*\*? ?/, ''));
    const [, ...sections] = lines.join('\n').split(/^@example\b/m);
    return sections.map((section) => readExample(section.split(/^@\w/m)[0] ?? ''));
  });
}

/** Reads code in which a line `expression // => value` makes a claim. */
export function readExample(text: string): Example {
  const claims: Claim[] = [];
  let setup = '';
  let open = '';
  for (const line of text.split('\n')) {
    const [code = '', expected] = line.split(/\s*\/\/ => ?/);
    open += `${code}\n`;
    if (expected !== undefined) {
      const lead = /^\s*(?:const [^;]*; )+/.exec(open)?.[0] ?? '';
      setup += lead;
      open = open.slice(lead.length);
      claims.push({ setup, expression: open.trim().replace(/;$/, ''), expected });
      open = '';
    } else if (code.trimEnd().endsWith(';')) {
      setup += open;
      open = '';
    }
  }
  return { text: text.trim(), claims };
}
