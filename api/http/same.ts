/** `T` without `readonly` at any depth: schemas infer plain fields, the contract's are all readonly. */
type Plain<T> = T extends object ? { -readonly [Key in keyof T]: Plain<T[Key]> } : T;

/**
 * Whether two types say the same. `true satisfies Same<…>` binds a schema to the contract: unlike
 * `satisfies z.ZodType<…>` it also fails for a field too many and an optional field too few.
 */
export type Same<A, B> =
  (<T>() => T extends Plain<A> ? 1 : 2) extends <T>() => T extends Plain<B> ? 1 : 2 ? true : false;
