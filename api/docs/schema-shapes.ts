/** A JSON Schema as loosely as its readers need it. */
export interface JsonSchema {
  readonly [key: string]: unknown;
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly items?: JsonSchema;
  readonly anyOf?: readonly JsonSchema[];
  readonly enum?: readonly unknown[];
}

/** A node of the syntax tree, as loose as the parser gives it. */
export interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

/** The types of one file by name, and what the file says of each node. */
export interface Declarations {
  readonly text: string;
  readonly byName: ReadonlyMap<string, Node>;
  readonly describe: (node: Node) => JsonSchema;
}
