/** Small whole numbers by large ones. */
export interface Table {
  /** What was kept last for a key; −1 where nothing was. */
  readonly find: (key: number) => number;
  /** @param value whole, 0 to 32 767 */
  readonly keep: (key: number, value: number) => void;
}

const FIRST = 1024;

/**
 * Starts an empty table whose keys are whole numbers from 0 to 2⁵²: open addressing with a step of one
 * in typed arrays that double as they become half full (textbook), which makes no garbage as a `Map` of
 * such numbers does.
 *
 * @example
 * startTable().find(2 ** 50) // => -1
 */
export function startTable(): Table {
  let keys = new Float64Array(FIRST).fill(-1);
  let values = new Int16Array(FIRST);
  let used = 0;

  const seek = (key: number) => {
    const mask = keys.length - 1;
    const mixed = Math.imul((key >>> 0) ^ Math.imul(key / 4_294_967_296, 0x9e3779b1), 0x85ebca6b);
    let at = (mixed ^ (mixed >>> 15)) & mask;
    while (keys[at] !== key && keys[at] !== -1) at = (at + 1) & mask;
    return at;
  };

  const keep = (key: number, value: number) => {
    const at = seek(key);
    if (keys[at] === -1) used += 1;
    keys[at] = key;
    values[at] = value;
    if (2 * used > keys.length) grow();
  };

  const grow = () => {
    const [old, kept] = [keys, values];
    keys = new Float64Array(2 * old.length).fill(-1);
    values = new Int16Array(2 * old.length);
    for (let at = 0; at < old.length; at += 1) {
      const key = old[at] ?? -1;
      if (key === -1) continue;
      const place = seek(key);
      keys[place] = key;
      values[place] = kept[at] ?? 0;
    }
  };

  return {
    find: (key) => {
      const at = seek(key);
      return keys[at] === key ? (values[at] ?? -1) : -1;
    },
    keep,
  };
}
