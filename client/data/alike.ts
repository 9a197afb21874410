import * as v from 'valibot';

/** An object whose fields are all of one kind. */
export const alike = <Schema extends v.GenericSchema, const Key extends string>(
  schema: Schema,
  ...keys: Key[]
) => v.object(Object.fromEntries(keys.map((key) => [key, schema])) as Record<Key, Schema>);
