import type { Declarations, JsonSchema, Node } from './schema-shapes.ts';

/** What the parameters of a generic type stand for where it is used. */
type Meanings = ReadonlyMap<string, JsonSchema>;

const KEYWORDS: Readonly<Record<string, string>> = {
  TSStringKeyword: 'string',
  TSNumberKeyword: 'number',
  TSBooleanKeyword: 'boolean',
};

/**
 * The schema of one declared type, its own parts written out and the types it names as references.
 *
 * @param meanings what the parameters of a generic type stand for; empty for any other
 */
export function expandReference(
  declared: Declarations,
  node: Node,
  meanings: Meanings,
): JsonSchema {
  if (node.type === 'TSTypeAliasDeclaration') {
    return writeType(declared, node['typeAnnotation'] as Node, meanings);
  }
  const own = writeMembers(declared, (node['body'] as { body: readonly Node[] }).body, meanings);
  const bases = (node['extends'] as readonly Node[] | undefined) ?? [];
  return mergeGroups([
    ...bases.map((base) => openReference(declared, base, base['expression'] as Node, meanings)),
    own,
  ]);
}

function writeType(declared: Declarations, node: Node, meanings: Meanings): JsonSchema {
  const inner = (key: string) => writeType(declared, node[key] as Node, meanings);
  const types = () => node['types'] as readonly Node[];
  const keyword = KEYWORDS[node.type];
  if (keyword !== undefined) return { type: keyword };
  if (node.type === 'TSUnknownKeyword') return {};
  switch (node.type) {
    case 'TSLiteralType':
      return { enum: [(node['literal'] as Node)['value']] };
    case 'TSTypeOperator':
      if (node['operator'] === 'readonly') return inner('typeAnnotation');
      break;
    case 'TSParenthesizedType':
      return inner('typeAnnotation');
    case 'TSArrayType':
      return { type: 'array', items: inner('elementType') };
    case 'TSUnionType':
      return mergeChoices(types().map((one) => writeType(declared, one, meanings)));
    case 'TSIntersectionType':
      return mergeGroups(types().map((one) => openType(declared, one, meanings)));
    case 'TSTypeLiteral':
      return writeMembers(declared, node['members'] as readonly Node[], meanings);
    case 'TSTypeReference':
      return writeReference(declared, node, meanings);
  }
  throw new Error(`A type of the contract is written as ${node.type}, which is not read yet.`);
}

function writeReference(declared: Declarations, node: Node, meanings: Meanings): JsonSchema {
  const name = nameOf(node['typeName'] as Node);
  const meaning = meanings.get(name);
  if (meaning !== undefined) return meaning;
  const isPlain = declared.byName.has(name) && listArguments(node).length === 0;
  return isPlain
    ? { $ref: `#/components/schemas/${name}` }
    : openReference(declared, node, node['typeName'] as Node, meanings);
}

/** A type with its parts written out, even where it has a name. */
function openType(declared: Declarations, node: Node, meanings: Meanings): JsonSchema {
  return node.type === 'TSTypeReference'
    ? openReference(declared, node, node['typeName'] as Node, meanings)
    : writeType(declared, node, meanings);
}

function openReference(
  declared: Declarations,
  node: Node,
  named: Node,
  meanings: Meanings,
): JsonSchema {
  const name = nameOf(named);
  const [first, second] = listArguments(node);
  const open = (type: Node | undefined) => openType(declared, type ?? node, meanings);
  if (name === 'Readonly') return open(first);
  if (name === 'Partial') return { ...open(first), required: [] };
  if (name === 'Record') {
    return { type: 'object', additionalProperties: writeType(declared, second ?? node, meanings) };
  }
  if (name === 'Omit' || name === 'Pick') {
    const keys = (open(second).enum ?? []).map(String);
    return keepKeys(open(first), (key) => keys.includes(key) === (name === 'Pick'));
  }
  const target = declared.byName.get(name);
  if (target === undefined) throw new Error(`The contract has no type ${name}.`);
  const { params = [] } = (target['typeParameters'] ?? {}) as { params?: readonly Node[] };
  const given = listArguments(node).map((one) => writeType(declared, one, meanings));
  const names = params.map((param) => nameOf(param['name'] as Node));
  return expandReference(
    declared,
    target,
    new Map(names.map((param, at) => [param, given[at] ?? {}])),
  );
}

function writeMembers(
  declared: Declarations,
  members: readonly Node[],
  meanings: Meanings,
): JsonSchema {
  const parts = members.map((member) => {
    const key = member['key'] as Node;
    const name = key.type === 'Literal' ? String(key['value']) : nameOf(key);
    const type = (member['typeAnnotation'] as Node)['typeAnnotation'] as Node;
    const isRequired = member['optional'] !== true;
    const schema = { ...writeType(declared, type, meanings), ...declared.describe(member) };
    return { name, schema, isRequired };
  });
  return {
    type: 'object',
    properties: Object.fromEntries(parts.map(({ name, schema }) => [name, schema])),
    required: parts.filter(({ isRequired }) => isRequired).map(({ name }) => name),
  };
}

function mergeGroups(groups: readonly JsonSchema[]): JsonSchema {
  return {
    type: 'object',
    properties: Object.assign({}, ...groups.map(({ properties }) => properties)),
    required: [...new Set(groups.flatMap(({ required }) => required ?? []))],
  };
}

/** Literals become one list; what is left stands side by side. */
function mergeChoices(choices: readonly JsonSchema[]): JsonSchema {
  const literals = choices.flatMap((choice) => choice.enum ?? []);
  const others = choices.filter((choice) => choice.enum === undefined);
  if (others.length === 0) return { enum: literals };
  return { anyOf: [...others, ...(literals.length > 0 ? [{ enum: literals }] : [])] };
}

function keepKeys(schema: JsonSchema, keep: (key: string) => boolean): JsonSchema {
  const entries = Object.entries(schema.properties ?? {}).filter(([key]) => keep(key));
  const required = (schema.required ?? []).filter(keep);
  return { ...schema, properties: Object.fromEntries(entries), required };
}

function listArguments(node: Node): readonly Node[] {
  return ((node['typeArguments'] ?? {}) as { params?: readonly Node[] }).params ?? [];
}

function nameOf(node: Node): string {
  return String(node['name']);
}
