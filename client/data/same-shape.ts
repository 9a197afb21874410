/** A type with each field marked as needed or not, at every level, so that assignability tells them apart. */
type Marked<T> = T extends readonly (infer Item)[]
  ? { readonly item: Marked<Item> }
  : T extends object
    ? {
        readonly [Key in keyof T]-?: {
          readonly left: Record<never, never> extends Pick<T, Key> ? 'out' : 'never';
          readonly blank: Record<Key, undefined> extends Pick<T, Key> ? 'allowed' : 'refused';
          readonly type: Marked<T[Key]>;
        };
      }
    : T;

/**
 * `true` only where two types are one shape: no field more, none fewer, none optional on one side only;
 * `readonly` makes no difference.
 * A line `const same: SameShape<A, B> = true` then fails to compile as soon as they part.
 */
export type SameShape<A, B> = [Marked<A>] extends [Marked<B>]
  ? [Marked<B>] extends [Marked<A>]
    ? true
    : false
  : false;

/**
 * A type that nobody may write to, at every level. `object &` lets a type whose fields are all optional stand for one
 * that has none of them.
 */
export type Frozen<T> = T extends object
  ? object & { readonly [Key in keyof T]: Frozen<T[Key]> }
  : T;
