import type { Fault, Outcome } from '#core/outcome.ts';
import type { BoundEndpoint } from '../http/bind-endpoint.ts';
import { listPairs } from './split-query.ts';
import type { Telling } from './telling.ts';
import type { View } from './views.ts';

/** What was asked of a view. */
interface Asked {
  /** In its canonical form, or as it came where it is at fault; of the example where nothing was asked. */
  readonly query: string;
  /** Nothing was asked, or nothing that is known here. */
  readonly isExample: boolean;
}

/** What a page shows of one view: an answer told, or every fault. */
export type Seen =
  | (Asked & { readonly ok: true; readonly telling: Telling })
  | (Asked & { readonly ok: false; readonly faults: readonly Fault[] });

/** How strictly a query is read. */
export interface Reading {
  /** What other sites append to an address is passed over, as the elements do on a page of our own. */
  readonly isLenient: boolean;
}

/** Views by name or by page, and the endpoints that they ask. */
export type Endpoints = readonly Pick<BoundEndpoint, 'path' | 'understandQuery'>[];

/**
 * Asks the endpoint of a view and has its answer told. The body is the one that the API sends, so a page
 * can show nothing that the API does not say.
 *
 * @param query without question mark; the view's example where it is empty
 */
export function askView(view: View, endpoints: Endpoints, query: string, how: Reading): Seen {
  const endpoint = endpoints.find(({ path }) => path === view.asks);
  if (endpoint === undefined) throw new Error(`No endpoint answers ${view.asks}.`);
  const isExample = query === '';
  const named = endpoint.understandQuery(isExample ? view.example : query);
  if (named.ok) {
    const telling = view.tell(named.value.write());
    return { ok: true, isExample, query: named.value.query, telling };
  }
  const kept = how.isLenient ? leaveOut(query, named) : query;
  if (kept !== query) return askView(view, endpoints, kept, how);
  return { ok: false, isExample, query, faults: named.faults };
}

/** A query without the parts that nobody here knows by their first name. */
function leaveOut(query: string, named: Outcome<unknown>): string {
  const faults = named.ok ? [] : named.faults;
  const names = new Set(faults.filter(isUnknown).map(({ path }) => path[0]));
  const parts = query.split('&');
  return parts.filter((part) => !names.has(listPairs(part)[0]?.[0].split('.')[0])).join('&');
}

/** A first name that no input has, or that none can have: `utm_source` is no name at all. */
function isUnknown({ code, path, received }: Fault): boolean {
  if (path.length !== 1) return false;
  return code === 'unknown-key' || (code === 'malformed-query' && received === path[0]);
}

/** The places at fault, dotted as in a query. */
export function listFaulty(seen: Seen): readonly string[] {
  return seen.ok ? [] : seen.faults.map(({ path }) => path.join('.'));
}
