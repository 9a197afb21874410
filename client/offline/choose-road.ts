/** What is known of a request before it is answered. */
export interface Asked {
  readonly method: string;
  readonly url: string;
  /** A page is to be opened, not a part of one fetched. */
  readonly isPage: boolean;
  /** The address of the page that asks; empty where the browser does not say. */
  readonly referrer: string;
}

/** What this version of the site consists of. */
export interface Site {
  readonly origin: string;
  /** Paths of all pages. */
  readonly pages: readonly string[];
  /** Paths that are kept beforehand: one page whole, with all that it needs. */
  readonly kept: readonly string[];
}

/** First from what is kept; first from the network; or as if nobody stood between. */
export type Road = 'cache' | 'network' | 'none';

/** The bundler puts a digest of what is in a file into its name, so that the file never changes. */
const HASHED = /-[A-Z0-9]{8}\.(js|css)$/;
/** Files that pages are made of. */
const FILE = /\.(js|css|png|svg|webmanifest)$/;

/**
 * How to answer a request. A page that is kept whole, and what it asks for, come from what is kept, all of one version;
 * a file whose name tells its contents comes from there too. Other pages and files come from the network where it
 * answers in time. What the service reckons is nobody's here.
 */
export function chooseRoad({ method, url, isPage, referrer }: Asked, site: Site): Road {
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== site.origin || pathname.startsWith('/v1/')) return 'none';
  const isKept = site.kept.includes(pathname);
  if (isPage) return isKept ? 'cache' : site.pages.includes(pathname) ? 'network' : 'none';
  if (HASHED.test(pathname)) return 'cache';
  if (!FILE.test(pathname)) return 'none';
  const from = referrer === '' ? '' : new URL(referrer).pathname;
  const isOfKeptPage = site.kept.includes(from) && site.pages.includes(from);
  return isKept && isOfKeptPage ? 'cache' : 'network';
}
