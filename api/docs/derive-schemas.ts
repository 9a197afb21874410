import { parseAst } from 'vitest/node';
import { expandReference } from './expand-reference.ts';
import type { Declarations, JsonSchema, Node } from './schema-shapes.ts';

/**
 * JSON Schemas of TypeScript types, so that answers are described by the very types they are built to.
 * It reads what a contract of plain data needs: interfaces, literals, unions, lists, records, and
 * `Partial`, `Omit` and `Pick`; anything else is an error, so that nothing is described as anything.
 *
 * @param text TypeScript of which only declarations of types matter; docblocks become descriptions
 * @param roots names of the types wanted; what they mention comes with them
 * @returns a schema for each type reached, by name, in the order of their names
 * @example
 * deriveSchemas('interface A { readonly a?: number }', ['A']) // => { A: { type: 'object', properties: { a: { type: 'number' } }, required: [] } }
 */
export function deriveSchemas(
  text: string,
  roots: readonly string[],
): Readonly<Record<string, JsonSchema>> {
  const declared = findDeclarations(text);
  const found = new Map<string, JsonSchema>();
  const queue = [...roots];
  for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
    if (found.has(name)) continue;
    const node = declared.byName.get(name);
    if (node === undefined) throw new Error(`The contract has no type ${name}.`);
    const described = describe(declared, node);
    const schema = { ...described, ...expandReference(declared, node, new Map()) };
    found.set(name, schema);
    queue.push(...findMentions(schema));
  }
  return Object.fromEntries([...found].sort(([one], [other]) => (one < other ? -1 : 1)));
}

function findDeclarations(text: string): Declarations {
  const { body } = parseAst(text, { lang: 'ts' }) as unknown as { body: readonly Node[] };
  const byName = new Map<string, Node>();
  for (const statement of body) {
    const node = (statement['declaration'] ?? statement) as Node;
    if (node.type !== 'TSInterfaceDeclaration' && node.type !== 'TSTypeAliasDeclaration') continue;
    byName.set(String((node['id'] as Node)['name']), { ...node, start: statement['start'] });
  }
  return { text, byName, describe: (node) => describe({ text }, node) };
}

/** The docblock that ends where a node starts. */
function describe({ text }: Pick<Declarations, 'text'>, node: Node): JsonSchema {
  const before = text.slice(0, Number(node['start']));
  const block = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*$/.exec(before)?.[1];
  if (block === undefined) return {};
  const lines = block.split('\n').map((line) => line.replace(/^\s*\*?\s?/, '').trim());
  return { description: lines.join(' ').trim() };
}

function findMentions(schema: unknown): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  return Object.entries(schema).flatMap(([key, part]) =>
    key === '$ref' ? [String(part).slice(String(part).lastIndexOf('/') + 1)] : findMentions(part),
  );
}
