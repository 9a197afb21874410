import { type Node, parseModule, writeChain } from './parse-module.ts';

/** Files that a runtime, a tool or somebody else's package wants a default export of. */
export const DEFAULT_EXPORTS: readonly string[] = [
  'api/worker.ts',
  'tests/vitest.config.ts',
  'tests/support/jstat.d.ts',
];

/** Files that may be longer than others, each with the reason. */
export const LONG_FILES: Readonly<Record<string, string>> = {
  'api/core/contract.ts': 'the one definition of the wire, types only',
};

const MOST_LINES = { source: 250, test: 400 } as const;

/** Words that tell of work put off or of a check silenced; written in halves, so that this file passes. */
const EXCUSES = [
  ['TO', 'DO'],
  ['FIX', 'ME'],
  ['HA', 'CK'],
  ['X', 'XX'],
  ['@ts-', 'ignore'],
  ['@ts-', 'expect-error'],
  ['@ts-', 'nocheck'],
  ['biome-', 'ignore'],
  ['eslint-', 'disable'],
  ['v8 ', 'ignore'],
].map((halves) => halves.join(''));

const PUT_OFF = /^(test|it|describe)\.(.*\.)?(skip|only|todo|fails|skipIf|runIf)$/;
const UNCERTAIN = /^(Math\.random|Date|Date\..+|performance\..+|crypto\..+)$/;

/** What a file does that is not done in this house, a sentence each. */
export function judgeManners(file: string, text: string): readonly string[] {
  const { nodes, values } = parseModule(text);
  const isDefault = values.includes('default') && !DEFAULT_EXPORTS.includes(file);
  return [
    ...judgeLength(file, text),
    ...(isDefault ? [`${file} has a default export.`] : []),
    ...EXCUSES.filter((word) => text.includes(word)).map((word) => `${file} says ${word}.`),
    ...nodes.flatMap((node) => judgeNode(file, node)),
    ...(file.startsWith('client/') ? judgeStyles(file, text) : []),
    ...(file.startsWith('api/core/') ? judgeCertainty(file, nodes) : []),
  ];
}

/** `rem` follows the root of somebody else's page, which an element must not; our own page may (page.css). */
function judgeStyles(file: string, text: string): readonly string[] {
  const found = text.match(/\b\d*\.?\d+rem\b/g) ?? [];
  return [...new Set(found)].map((size) => `${file} sizes something ${size}.`);
}

function judgeLength(file: string, text: string): readonly string[] {
  const lines = text.trimEnd().split('\n').length;
  const isTest = file.startsWith('tests/');
  const most = isTest ? MOST_LINES.test : MOST_LINES.source;
  if (lines <= most || LONG_FILES[file] !== undefined) return [];
  return [`${file} has ${lines} lines, ${lines - most} more than the ${most} it may have.`];
}

function judgeNode(file: string, node: Node): readonly string[] {
  if (node.type === 'TSAnyKeyword') return [`${file} uses any.`];
  if (node.type === 'TSEnumDeclaration') return [`${file} declares an enum.`];
  if (node.type === 'TSNonNullExpression') return [`${file} silences a check with an exclamation.`];
  const chain = node.type === 'MemberExpression' ? writeChain(node) : '';
  return PUT_OFF.test(chain) ? [`${file} calls ${chain}.`] : [];
}

/** The core gives the same answer for ever: no clock, no chance. And it has no classes. */
function judgeCertainty(file: string, nodes: readonly Node[]): readonly string[] {
  const chains = nodes
    .filter(({ type }) => type === 'MemberExpression' || type === 'NewExpression')
    .map((node) => writeChain(node.type === 'NewExpression' ? node['callee'] : node))
    .filter((chain) => UNCERTAIN.test(chain));
  const classes = nodes.filter(({ type }) => type === 'ClassDeclaration');
  return [
    ...chains.map((chain) => `${file} asks ${chain}, which differs from day to day.`),
    ...classes.map(() => `${file} declares a class.`),
  ];
}

/** The name of a file says what is in it, in kebab-case. */
export function judgeFileName(file: string): readonly string[] {
  const name = file.slice(file.lastIndexOf('/') + 1);
  const vague = /(^|-)(utils?|helpers?|misc|manager)[-.]|(^|-)common\./.test(name);
  const isKebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.(browser|test|config|d))*\.ts$/.test(name);
  return [
    ...(vague ? [`${file} has a name that says nothing.`] : []),
    ...(isKebab ? [] : [`${file} is not named in kebab-case.`]),
  ];
}
