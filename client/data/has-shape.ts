/** Tells whether a value, out of JSON or from anywhere, is of a kind. */
export type Check<Kind> = (value: unknown) => value is Kind;

type Checks = Readonly<Record<string, Check<unknown>>>;
type Kinds<Fields extends Checks> = {
  readonly [Key in keyof Fields]: Fields[Key] extends Check<infer Kind> ? Kind : never;
};

/** A number that is one: JSON can write what reads as infinite. */
export const isNumber: Check<number> = (value): value is number => Number.isFinite(value);

export const isText: Check<string> = (value): value is string => typeof value === 'string';

/** One of a few words, or either truth. */
export const isOneOf =
  <const Word extends string | boolean>(...words: readonly Word[]): Check<Word> =>
  (value): value is Word =>
    words.some((word) => word === value);

/** A list of one kind. */
export const isListOf =
  <Item>(isItem: Check<Item>): Check<readonly Item[]> =>
  (value): value is readonly Item[] =>
    Array.isArray(value) && value.every(isItem);

/**
 * An object with these fields, and with those others where it has them; whatever else is in it passes unread. It does
 * what the large library does elsewhere for elements that must be lighter than that library.
 *
 * @example
 * const isPair = hasShape({ width: isNumber }, { note: isText });
 * isPair({ width: 8, more: true }) // => true
 * isPair({ width: 8, note: 3 }) // => false
 */
export const hasShape =
  <Fields extends Checks, Others extends Checks = Record<never, never>>(
    fields: Fields,
    others: Others = {} as Others,
  ): Check<Kinds<Fields> & Partial<Kinds<Others>>> =>
  (value): value is Kinds<Fields> & Partial<Kinds<Others>> => {
    if (typeof value !== 'object' || value === null) return false;
    const read = (key: string): unknown => Reflect.get(value, key);
    const isThere = Object.entries(fields).every(([key, is]) => is(read(key)));
    const isRight = ([key, is]: [string, Check<unknown>]) =>
      read(key) === undefined || is(read(key));
    return isThere && Object.entries(others).every(isRight);
  };
