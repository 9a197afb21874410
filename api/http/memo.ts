/** What a {@link Memo} may hold at most. */
export interface MemoBounds {
  readonly entries: number;
  /** Of all values together. */
  readonly bytes: number;
  /** Of one value; what is larger is not kept. */
  readonly largest: number;
}

/** Values by their key, of which the least recently asked for goes first. */
export interface Memo<Value> {
  readonly find: (key: string) => Value | undefined;
  readonly keep: (key: string, value: Value) => void;
}

/**
 * Makes a memory that is bounded in entries and in bytes, so that it stays the same size however many
 * different things are asked.
 *
 * @param weigh bytes of a value, its key included
 * @example
 * const memo = makeMemo((text) => text.length, { entries: 2, bytes: 99, largest: 9 });
 * memo.keep('a', 'one');
 * memo.find('a') // => 'one'
 * memo.find('b') // => undefined
 */
export function makeMemo<Value>(
  weigh: (value: Value, key: string) => number,
  bounds: MemoBounds,
): Memo<Value> {
  // A map keeps the order in which its keys came, so the first is the one longest unused.
  const values = new Map<string, Value>();
  let bytes = 0;
  const drop = (key: string) => {
    const value = values.get(key);
    if (value === undefined) return;
    values.delete(key);
    bytes -= weigh(value, key);
  };
  const find = (key: string) => {
    const value = values.get(key);
    if (value === undefined) return undefined;
    values.delete(key);
    values.set(key, value);
    return value;
  };
  const keep = (key: string, value: Value) => {
    drop(key);
    const own = weigh(value, key);
    if (own > bounds.largest) return;
    values.set(key, value);
    bytes += own;
    for (const oldest of values.keys()) {
      if (values.size <= bounds.entries && bytes <= bounds.bytes) break;
      drop(oldest);
    }
  };
  return { find, keep };
}
