import { parseAst } from 'vitest/node';

/** One mention of another module. */
export type Import = {
  readonly specifier: string;
  /** Nothing of it is left at run time. */
  readonly isType: boolean;
  readonly isReexport: boolean;
};

/** What the checks need to know of one TypeScript file. */
export type Module = {
  readonly imports: readonly Import[];
  /** Names given out at run time; `default` for a default export. */
  readonly values: readonly string[];
  readonly nodes: readonly Node[];
};

/** What stands for an address made up at run time: it could be anything, so next to no rule lets it pass. */
export const COMPUTED = '(computed)';

/** A node of the syntax tree, as loose as the parser gives it. */
export type Node = { readonly type: string; readonly [key: string]: unknown };

/** Parses a TypeScript file with the parser that the test runner itself uses. */
export function parseModule(text: string): Module {
  const nodes = [...walk(parseAst(text, { lang: 'ts' }))];
  return { nodes, imports: nodes.flatMap(readImport), values: nodes.flatMap(readExport) };
}

/** `a.b.c` of a member expression, or the name of an identifier; empty for anything else. */
export function writeChain(node: unknown): string {
  if (!isNode(node)) return '';
  if (node.type === 'Identifier') return String(node['name']);
  if (node.type === 'CallExpression') return writeChain(node['callee']);
  if (node.type !== 'MemberExpression' || node['computed'] === true) return '';
  return `${writeChain(node['object'])}.${writeChain(node['property'])}`;
}

function* walk(value: unknown): Generator<Node> {
  if (Array.isArray(value)) {
    for (const item of value) yield* walk(item);
  } else if (typeof value === 'object' && value !== null) {
    if (isNode(value)) yield value;
    for (const inner of Object.values(value)) yield* walk(inner);
  }
}

function isNode(value: unknown): value is Node {
  return (
    typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'
  );
}

function readImport(node: Node): readonly Import[] {
  switch (node.type) {
    case 'ImportDeclaration':
      return [mention(node, namesTypesOnly(node, 'importKind'), false)];
    case 'ExportAllDeclaration':
      return [mention(node, node['exportKind'] === 'type', true)];
    case 'ExportNamedDeclaration':
      return isNode(node['source'])
        ? [mention(node, namesTypesOnly(node, 'exportKind'), true)]
        : [];
    case 'ImportExpression':
      return [mention(node, false, false)];
    case 'TSImportType':
      return [mention(node, true, false)];
    default:
      return [];
  }
}

function mention(node: Node, isType: boolean, isReexport: boolean): Import {
  const { source } = node;
  const specifier = isNode(source) && source.type === 'Literal' ? source['value'] : COMPUTED;
  return { specifier: String(specifier), isType, isReexport };
}

function namesTypesOnly(node: Node, key: 'importKind' | 'exportKind'): boolean {
  const specifiers = Array.isArray(node['specifiers']) ? node['specifiers'] : [];
  if (node[key] === 'type') return true;
  return specifiers.length > 0 && specifiers.every((one: Node) => one[key] === 'type');
}

function readExport(node: Node): readonly string[] {
  if (node.type === 'ExportDefaultDeclaration') return ['default'];
  if (node.type !== 'ExportNamedDeclaration' || node['exportKind'] === 'type') return [];
  const { declaration, specifiers } = node;
  const named = Array.isArray(specifiers) ? specifiers.map((one: Node) => one['exported']) : [];
  if (!isNode(declaration)) return named.map(writeChain);
  const list = declaration['declarations'];
  const declared = Array.isArray(list) ? list.map((one: Node) => one['id']) : [declaration['id']];
  return declared.map(writeChain);
}
