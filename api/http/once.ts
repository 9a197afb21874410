/**
 * Puts off what is dear to make until it is first asked for, and makes it once. Schemas are made so: all of
 * them would take longer than all else that is evaluated when the worker is loaded.
 *
 * @example
 * const give = once(() => ({ made: true }));
 * give() === give() // => true
 */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
