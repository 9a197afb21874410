/** One part of a query: its name and its value, decoded. */
export type Pair = readonly [name: string, value: string];

/** A query as a page is asked by it. */
export interface SplitQuery {
  /** What the endpoint is asked, percent-encoded as it came. */
  readonly query: string;
  /** What is for the page itself: names that start with `_`, which no endpoint can have. */
  readonly own: readonly Pair[];
}

/**
 * Parts what a page is asked from what its endpoint is. A field that was left blank in a form of plain
 * HTML is sent with no value: it counts as left out.
 *
 * @param search what stands after the `?`, with it or without
 * @example
 * splitQuery('?unit=cm&washes=&_lang=de') // => { query: 'unit=cm', own: [['lang', 'de']] }
 */
export function splitQuery(search: string): SplitQuery {
  const parts = search.replace(/^\?/, '').split('&');
  const isOwn = (part: string) => /^(_|%5f)/i.test(part);
  const query = parts.filter((part) => !isOwn(part) && part !== '' && !part.endsWith('='));
  const own = listPairs(parts.filter(isOwn).join('&'));
  return { query: query.join('&'), own: own.map(([name, value]) => [name.slice(1), value]) };
}

/**
 * The parts of a query in their order, decoded as forms encode them.
 *
 * @example
 * listPairs('a=1+2&b=%20') // => [['a', '1 2'], ['b', ' ']]
 */
export function listPairs(query: string): readonly Pair[] {
  return [...new URLSearchParams(query)];
}
