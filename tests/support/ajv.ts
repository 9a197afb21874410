import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';

/** What of an OpenAPI document the checks read. */
export interface OpenapiDocument {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, object>> };
}

export interface Operation {
  readonly parameters?: readonly { readonly name: string }[];
  readonly requestBody?: { readonly content: Readonly<Record<string, Media>> };
  readonly responses: Readonly<
    Record<string, { readonly content?: Readonly<Record<string, Media>> }>
  >;
}

export interface Media {
  readonly schema: { readonly $ref?: string };
  readonly examples?: Readonly<Record<string, { readonly value: unknown }>>;
}

/**
 * Checks of the schemas of an OpenAPI document, by a validator that knows nothing of this project.
 *
 * @param closed whether a group may have no part that its schema does not name: stricter than what is
 *   published, so that nothing is answered that is not described
 */
export function makeChecker(
  document: OpenapiDocument,
  closed: boolean,
): (reference: string) => ValidateFunction {
  const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
  const schemas = closed ? close(document.components.schemas) : document.components.schemas;
  ajv.addSchema({ $id: 'api', components: { schemas } });
  return (reference) => ajv.compile({ $ref: `api${reference}` });
}

function close(value: unknown): object {
  if (Array.isArray(value)) return value.map(closePart);
  const entries = Object.entries(value as object).map(([key, part]) => [key, closePart(part)]);
  const closed = Object.fromEntries(entries) as Record<string, unknown>;
  const isGroup = closed['type'] === 'object' && closed['properties'] !== undefined;
  return isGroup ? { ...closed, additionalProperties: false } : closed;
}

function closePart(part: unknown): unknown {
  return typeof part === 'object' && part !== null ? close(part) : part;
}
