/** What a line of shell with curl in it asks for. */
export type CurlRequest = {
  readonly url: string;
  readonly method: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
};

/** Commands of a block of shell: lines joined after a backslash and inside a quote, comments left out. */
export function splitCommands(text: string): readonly string[] {
  const commands: string[] = [];
  let open = '';
  for (const line of text.replace(/\\\n\s*/g, '').split('\n')) {
    open += open === '' ? line.trim() : `\n${line}`;
    if ((open.split("'").length - 1) % 2 === 1) continue;
    if (open !== '' && !open.startsWith('#')) commands.push(open);
    open = '';
  }
  return commands;
}

/** Words as a shell would part them: quotes of both kinds, no expansion, so a dollar or backtick is refused. */
export function splitWords(command: string): readonly string[] {
  if (/[`$|;<>]/.test(command.replace(/'[^']*'/g, ''))) throw new Error(`Too clever: ${command}`);
  const words = command.matchAll(/(?:'[^']*'|"[^"]*"|[^\s'"])+/g);
  return [...words].map(([word]) => word.replace(/'([^']*)'|"([^"]*)"/g, '$1$2'));
}

/**
 * Reads a command `curl` with the few options that documents use: `-s`, `-i`, `-X`, `-H`, `-d`.
 * As curl does, `-d` alone sends a form, so a document that forgets the content type is found out.
 */
export function readCurl(command: string): CurlRequest {
  const [program, ...words] = splitWords(command);
  if (program !== 'curl') throw new Error(`Not curl: ${command}`);
  const headers: Record<string, string> = {};
  const rest: string[] = [];
  let method: string | undefined;
  let body: string | undefined;
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at] ?? '';
    if (word === '-s' || word === '-i') continue;
    if (!word.startsWith('-')) rest.push(word);
    else {
      at += 1;
      const value = words[at] ?? '';
      const [name = '', ...parts] = value.split(': ');
      if (word === '-X') method = value;
      else if (word === '-d') body = value;
      else if (word === '-H') headers[name.toLowerCase()] = parts.join(': ');
      else throw new Error(`curl ${word} is not known to this check.`);
    }
  }
  const [url, ...others] = rest;
  if (url === undefined || others.length > 0) throw new Error(`One address, please: ${command}`);
  if (body === undefined) return { url, method: method ?? 'GET', headers };
  const form = { 'content-type': 'application/x-www-form-urlencoded' };
  return { url, method: method ?? 'POST', headers: { ...form, ...headers }, body };
}
