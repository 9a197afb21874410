import fc from 'fast-check';

/** A JSON Schema as far as requests use it. */
interface Schema {
  readonly $ref?: string;
  readonly type?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
}

/** Numbers and texts that people use as lengths, and where no range is told any others. */
const numbers = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: 8, max: 960 }).map((eighths) => eighths / 8) },
  { weight: 1, arbitrary: fc.double({ noNaN: true, min: -1e6, max: 1e6 }) },
);
const lengths = fc.constantFrom('8 1/2', '8½', '21,5 cm', '0.75 yd', '42"', '1 m', '300 mm', '12');

/**
 * Draws inputs that a JSON Schema takes, from the schema alone.
 *
 * @param components what its references name, by the last part of the reference
 */
export function drawInput(
  schema: Schema,
  components: Readonly<Record<string, object>>,
): fc.Arbitrary<unknown> {
  const inner = (part: Schema) => drawInput(part, components);
  const { $ref, anyOf, type } = schema;
  if ($ref !== undefined) return inner(components[$ref.split('/').at(-1) ?? ''] as Schema);
  if (anyOf !== undefined) return fc.oneof(...anyOf.map(inner));
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  if ('const' in schema) return fc.constant(schema.const);
  if (type === 'object') return drawGroup(schema, inner);
  if (type === 'array') {
    const { items = {}, minItems: minLength = 0, maxItems = 5 } = schema;
    return fc.array(inner(items), { minLength, maxLength: Math.min(maxItems, minLength + 4) });
  }
  if (type === 'boolean') return fc.boolean();
  if (type === 'string') return drawText(schema);
  if (type === 'integer' || type === 'number') return drawNumber(schema);
  throw new Error(`Nothing can be drawn from ${JSON.stringify(schema)}.`);
}

function drawGroup(schema: Schema, inner: (part: Schema) => fc.Arbitrary<unknown>) {
  const { properties = {}, required = [] } = schema;
  const parts = Object.entries(properties).map(([key, part]) => [key, inner(part)] as const);
  const requiredKeys = [...required];
  return fc.record(Object.fromEntries(parts), { requiredKeys, noNullPrototype: true });
}

function drawText({ pattern, maxLength = 40 }: Schema): fc.Arbitrary<string> {
  if (pattern === undefined) return lengths;
  if (pattern.startsWith('^#')) return fc.stringMatching(/^#[0-9a-f]{6}$/);
  if (pattern.includes('\\p{Cc}')) return fc.stringMatching(/^[ -~é½青]{1,12}$/u);
  return fc.stringMatching(new RegExp(pattern)).filter((text) => text.length <= maxLength);
}

function drawNumber({ type, minimum, maximum }: Schema): fc.Arbitrary<number> {
  if (minimum === undefined || maximum === undefined) return numbers;
  const low = Math.ceil(minimum);
  const high = Math.max(low, Math.floor(maximum));
  const whole = fc.oneof(
    fc.integer({ min: low, max: high }),
    fc.integer({ min: low, max: Math.min(high, low + 10) }),
  );
  return type === 'integer'
    ? whole
    : fc.oneof(whole, fc.double({ min: minimum, max: maximum, noNaN: true }));
}
