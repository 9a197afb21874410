import { KEY_ORDER } from './key-order.ts';

/** Decimals of a number in an address. */
const DECIMALS = 9;

/**
 * The address that asks the service by GET, from the root of its host. Keys come in the service's own
 * order and numbers in their shortest writing, so that one input has one address and any cache finds
 * it again. Where lengths are numbers and no default is spelt out, it is the canonical one.
 *
 * @param path such as `/v1/plan`
 * @param input the request as the contract has it; parts that are undefined are left out
 * @example
 * writeAddress('/v1/plan', { target: { height: 50, width: 40.5 } }) // => '/v1/plan?target.width=40.5&target.height=50'
 */
export function writeAddress(path: string, input: object): string {
  return `${path}?${listPairs(input, '', '').join('&')}`;
}

function listPairs(value: unknown, name: string, group: string): readonly string[] {
  if (value === undefined) return [];
  if (Array.isArray(value)) {
    return value.flatMap((part, at) => listPairs(part, join(name, String(at)), group));
  }
  if (typeof value === 'object' && value !== null) {
    return sortKeys(Object.entries(value), group).flatMap(([key, part]) =>
      listPairs(part, join(name, key), key),
    );
  }
  const text = typeof value === 'number' ? writeNumber(value) : String(value);
  return [`${name}=${encodeURIComponent(text)}`];
}

function sortKeys(entries: readonly [string, unknown][], group: string) {
  const order = KEY_ORDER[group] ?? [];
  const rank = ([key]: readonly [string, unknown]) => {
    const at = order.indexOf(key);
    return at < 0 ? order.length : at;
  };
  return [...entries].sort((one, other) => rank(one) - rank(other));
}

function writeNumber(value: number): string {
  return Number.isFinite(value) ? value.toFixed(DECIMALS).replace(/\.?0+$/, '') : String(value);
}

function join(name: string, key: string): string {
  return name === '' ? key : `${name}.${key}`;
}
