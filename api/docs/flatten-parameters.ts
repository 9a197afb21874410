import type { JsonSchema } from './schema-shapes.ts';

/** One name that a query may have. */
export interface Parameter {
  readonly name: string;
  readonly in: 'query';
  readonly required: boolean;
  readonly description: string;
  readonly schema: JsonSchema;
}

/**
 * The names that a flat query may have: a dotted path for each single value of the input. A list is
 * shown by its first entry, since OpenAPI has no way to count on.
 *
 * @param schema the input as one JSON Schema, references written out
 * @example
 * flattenParameters({ properties: { a: { items: { type: 'number', description: 'A' } } } }) // => [{ name: 'a.0', in: 'query', required: false, description: 'A', schema: { type: 'number' } }]
 */
export function flattenParameters(schema: JsonSchema): readonly Parameter[] {
  const found = collect(schema, { name: '', required: true, description: '' });
  return [...Map.groupBy(found, ({ name }) => name).values()].flatMap(unite);
}

interface Place {
  readonly name: string;
  readonly required: boolean;
  readonly description: string;
}

function collect(schema: JsonSchema, place: Place): readonly Parameter[] {
  const { description = place.description, ...rest } = schema;
  const here = { ...place, description };
  const { anyOf, properties, items } = schema;
  if (properties !== undefined) {
    return Object.entries(properties).flatMap(([key, part]) => {
      const required = here.required && (schema.required ?? []).includes(key);
      return collect(part, { ...here, name: join(here.name, key), required });
    });
  }
  if (items !== undefined) return collect(items, { ...here, name: join(here.name, '0') });
  if (anyOf !== undefined && !anyOf.every(isSingle)) {
    return anyOf.flatMap((one) => collect(one, { ...here, required: false }));
  }
  return [{ ...here, in: 'query', schema: rest }].map(({ name, required, ...own }) => ({
    name,
    in: own.in as 'query',
    required,
    description: own.description,
    schema: own.schema,
  }));
}

function isSingle({ properties, items }: JsonSchema): boolean {
  return properties === undefined && items === undefined;
}

/** One name may come from several forms of the input; it is required by none of them then. */
function unite(same: readonly Parameter[]): readonly Parameter[] {
  const [first] = same;
  if (first === undefined) return [];
  const isAlike = same.every(
    ({ schema }) => JSON.stringify(schema) === JSON.stringify(first.schema),
  );
  const schema = isAlike ? first.schema : { anyOf: same.map((one) => one.schema) };
  return [{ ...first, required: same.length === 1 && first.required, schema }];
}

function join(name: string, key: string): string {
  return name === '' ? key : `${name}.${key}`;
}
