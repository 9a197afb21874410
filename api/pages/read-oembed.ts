import { SIZE_LIMITS } from '#core/limits.ts';
import { type Fault, fail, type Outcome, succeed } from '#core/outcome.ts';
import { VIEWS, type View } from './views.ts';

/** What is to be described for embedding. */
export interface OembedAsk {
  readonly format: string;
  /** The address that somebody pasted. */
  readonly address: URL;
  /** What a frame of it is asked from: never a lesser scheme than that of the request or of the address. */
  readonly origin: string;
  readonly view: View;
  /** Pixels that neither side may be above. */
  readonly most: { readonly width: number; readonly height: number };
}

/** A link may be this much longer than its query. */
const LONGEST = SIZE_LIMITS.query + 300;

/**
 * Reads a request for oEmbed (https://oembed.com, section 2.2). Parameters that are not of the standard
 * are passed over, since consumers send some of their own.
 *
 * Faults: `not-found` for what is not a page of this host that can be embedded, so that nobody has his own
 * pages framed through us; those of the parameters otherwise.
 *
 * @param request whole address of the request; pages of its host can be embedded
 */
export function readOembed(request: URL): Outcome<OembedAsk> {
  const { searchParams } = request;
  const given = (name: string) => searchParams.getAll(name);
  const repeated = ['url', 'format', 'maxwidth', 'maxheight']
    .filter((name) => given(name).length > 1)
    .map((name): Fault => ({ code: 'repeated-key', path: [name] }));
  const address = readAddress(given('url')[0]);
  const width = readMost('maxwidth', given('maxwidth')[0]);
  const height = readMost('maxheight', given('maxheight')[0]);
  const outcomes = [address, width, height];
  const faults = [...repeated, ...outcomes.flatMap((one) => (one.ok ? [] : one.faults))];
  if (faults.length > 0 || !address.ok || !width.ok || !height.ok) return fail(faults);
  const view = findView(address.value, request.host);
  if (view === undefined) {
    return fail([{ code: 'not-found', path: ['url'], received: address.value.href }]);
  }
  const most = { width: width.value, height: height.value };
  const format = given('format')[0] ?? 'json';
  // Behind a proxy that ends TLS the request itself comes in plain.
  const { origin } = address.value.protocol === 'https:' ? address.value : request;
  return succeed({ format, address: address.value, origin, view, most });
}

/** The view that an address shows, if it is one of ours. */
function findView({ host, pathname }: URL, own: string): View | undefined {
  if (host !== own) return undefined;
  return VIEWS.find(({ name, page }) => pathname === page || pathname === `/embed/${name}`);
}

function readAddress(text: string | undefined): Outcome<URL> {
  const path = ['url'];
  const expected = 'a whole address that starts with https:// or http://';
  if (text === undefined || text === '') return fail([{ code: 'missing', path, expected }]);
  if (text.length > LONGEST) {
    return fail([{ code: 'too-long', path, expected: LONGEST, received: text.length }]);
  }
  const address = URL.parse(text);
  if (address !== null && /^https?:$/.test(address.protocol)) return succeed(address);
  return fail([{ code: 'wrong-type', path, expected, received: text }]);
}

/** Pixels at most; endless where nothing is said. */
function readMost(name: string, text: string | undefined): Outcome<number> {
  if (text === undefined || text === '') return succeed(Number.POSITIVE_INFINITY);
  if (!/^\d{1,9}$/.test(text)) {
    return fail([{ code: 'not-whole', path: [name], received: text }]);
  }
  if (Number(text) > 0) return succeed(Number(text));
  return fail([{ code: 'too-small', path: [name], expected: 'at least 1', received: 0 }]);
}
