/** When an address is no longer the one to use, and which is. Days as `2027-01-31`, midnight UTC. */
export interface Retirement {
  readonly deprecated: string;
  /** From then on it may be gone; not before `deprecated`. */
  readonly sunset: string;
  readonly successor: `/${string}`;
  /** Page on what to do. */
  readonly more: `/${string}`;
}

/** Every address on its way out; none is. A row here is all that it takes to tell the world. */
export const RETIREMENTS: Readonly<Record<string, Retirement>> = {};

/**
 * The headers that tell programs of it: `Deprecation` (RFC 9745, a date as seconds since 1970),
 * `Sunset` (RFC 8594, a date as HTTP writes it) and links (RFC 8288).
 *
 * @throws where the sunset comes before the deprecation, or a day is none
 * @example
 * tellRetirement({ deprecated: '2025-01-01', sunset: '2025-07-01', successor: '/v2/plan', more: '/api' })['Deprecation'] // => '@1735689600'
 */
export function tellRetirement(retirement: Retirement): Readonly<Record<string, string>> {
  const { successor, more } = retirement;
  const deprecated = Date.parse(`${retirement.deprecated}T00:00:00Z`);
  const sunset = Date.parse(`${retirement.sunset}T00:00:00Z`);
  if (!(deprecated <= sunset)) throw new Error(`No sunset may come before its deprecation.`);
  return Object.freeze({
    Deprecation: `@${deprecated / 1000}`,
    Sunset: new Date(sunset).toUTCString(),
    Link: `<${successor}>; rel="successor-version", <${more}>; rel="deprecation"; type="text/html", <${more}>; rel="sunset"; type="text/html"`,
  });
}
