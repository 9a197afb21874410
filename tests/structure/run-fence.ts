import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { holdsExcerpt } from './holds-excerpt.ts';
import { resolve } from './import-rules.ts';
import { parseModule } from './parse-module.ts';
import { readCurl, splitCommands, splitWords } from './read-curl.ts';
import type { Fence } from './read-document.ts';
import { readExample } from './read-examples.ts';
import { runClaim, type Scope } from './run-claim.ts';
import { readText, root } from './source-tree.ts';

/** Something that answers a request, wherever it was sent. */
export type Ask = (
  url: string,
  init: {
    readonly method: string;
    readonly headers: Readonly<Record<string, string>>;
    readonly body?: string;
  },
) => Promise<{ readonly status: number; readonly text: () => Promise<string> }>;

/** What the block before said, for a block that shows what came of it. */
export type Before = { readonly output?: string };

/** Whether package.json knows a script, or npm itself a command. */
export function hasScript(name: string): boolean {
  const { scripts } = JSON.parse(readText('package.json')) as { readonly scripts: object };
  return name === 'ci' || name in scripts;
}

/** Runs one block of a document; throws where what it says does not hold. */
export async function runFence(fence: Fence, before: Before, ask: Ask): Promise<Before> {
  switch (fence.language) {
    case 'bash':
      return runShell(fence.text, ask);
    case 'json':
      return checkAnswer(fence.text, before);
    case 'ts':
      return runTypeScript(fence.text, ask);
    case 'text':
      return checkText(fence.text, before);
    default:
      throw new Error(`Line ${fence.line}: nobody runs blocks of “${fence.language}”.`);
  }
}

async function runShell(text: string, ask: Ask): Promise<Before> {
  let output = '';
  for (const command of splitCommands(text).flatMap((line) => line.split(' && '))) {
    output = command.startsWith('curl ') ? await runCurl(command, ask) : await runScript(command);
  }
  return output === '' ? {} : { output };
}

async function runCurl(command: string, ask: Ask): Promise<string> {
  const { url, ...init } = readCurl(command);
  return (await ask(url, init)).text();
}

/** Of npm's scripts only the one that prints and ends is run; the others must be there. */
async function runScript(command: string): Promise<string> {
  const [program, ...words] = splitWords(command.replace(/^[A-Z]+=\S+ /, ''));
  const name = words.find((word) => word !== 'run' && word !== '--') ?? '';
  if (program === 'npm' && name === 'demo') {
    const run = promisify(execFile)('npm', ['run', '--silent', 'demo'], { cwd: root });
    return (await run).stdout;
  }
  if (program === 'npm' && hasScript(name)) return '';
  if (program === 'node' && existsSync(join(root, name))) return '';
  throw new Error(`There is no ${command}.`);
}

async function checkAnswer(text: string, { output }: Before): Promise<Before> {
  if (output === undefined) throw new Error(`Nothing gave this answer:\n${text}`);
  if (!holdsExcerpt(JSON.parse(output), JSON.parse(text))) {
    throw new Error(`The answer holds no such thing:\n${text}\nIt is ${output.slice(0, 600)}`);
  }
  return { output };
}

/** What a command printed, in excerpts of whole lines; or a tree of paths, one a line. */
async function checkText(text: string, { output }: Before): Promise<Before> {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const missing =
    output === undefined
      ? lines.filter((line) => !existsSync(join(root, line.trim().split(/\s/)[0] ?? '')))
      : lines.filter((line) => !output.split('\n').includes(line));
  if (missing.length > 0) throw new Error(`There is no ${missing.join('\n')}`);
  return output === undefined ? {} : { output };
}

async function runTypeScript(text: string, ask: Ask): Promise<Before> {
  const claims = readExample(text.replace(/^import .*;\n/gm, '')).claims;
  if (claims.length === 0) throw new Error(`This block claims nothing:\n${text}`);
  const scope = await openScope(text, ask);
  const wrong = await Promise.all(claims.map((claim) => runClaim(claim, scope)));
  const told = wrong.filter((sentence) => sentence !== undefined);
  if (told.length > 0) throw new Error(told.join('\n'));
  return {};
}

async function openScope(text: string, ask: Ask): Promise<Scope> {
  const paths = parseModule(text).imports.map(({ specifier }) => resolve('README.md', specifier));
  const modules = await Promise.all(paths.map((path) => import(join(root, path))));
  const fetch = async (url: string, init: { readonly method?: string } & object = {}) => {
    const answer = await ask(url, { method: 'GET', headers: {}, ...init });
    return new Response(await answer.text(), { status: answer.status });
  };
  return Object.assign({ fetch }, ...modules) as Scope;
}
