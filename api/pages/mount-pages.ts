import type { Hono } from 'hono';
import { allowMethods } from '../http/allow-methods.ts';
import { refuseExcess, type Surroundings, tellPolicy } from '../http/limit-rate.ts';
import { chooseStatus } from '../http/problem-kinds.ts';
import { askView, type Endpoints, listFaulty, type Seen } from './ask-view.ts';
import { sendPage } from './send-page.ts';
import { splitQuery } from './split-query.ts';
import { VIEWS, type View } from './views.ts';
import { writeDiscovery } from './write-discovery.ts';
import { writeForm } from './write-form.ts';
import { writeResult } from './write-result.ts';

/** Where a static page has room: at the end of its head, and inside its element. */
export const MARKERS = { head: '<!--head-->', result: '<!--result-->' } as const;

type Page = View & { readonly page: `/${string}` };

/**
 * Serves each whole page at its own address with what needs no script put in: the result of the query, or
 * what is wrong with it in words, and the links by which it can be embedded. The page itself is a file
 * among the others; without such a file there is nothing at that address.
 */
export function mountPages(app: Hono<Surroundings>, endpoints: Endpoints): void {
  for (const view of VIEWS.filter(hasPage)) {
    const see = holdExample(view, endpoints);
    app.get(view.page, async (context) => {
      const request = context.req.raw;
      const { page } = view;
      // Asked anew, and not as the browser did: a tag that it holds is of the whole page, not of the file.
      const file = await context.env?.ASSETS?.fetch(new Request(new URL(page, request.url)));
      if (file === undefined || !file.ok) return context.notFound();
      const { search } = new URL(request.url);
      const isCounted = search !== '';
      const isOver = isCounted && (await refuseExcess(request, context.env)) !== undefined;
      const seen = isOver ? undefined : see(splitQuery(search).query);
      const html = fillPage(await file.text(), { view, request, seen });
      const status = seen === undefined || seen.ok ? 200 : chooseStatus(codesOf(seen));
      const headers = new Headers(file.headers);
      for (const name of ['Content-Length', 'Content-Encoding', 'ETag']) headers.delete(name);
      headers.set('Cache-Control', isOver ? 'no-store' : 'public, max-age=0, must-revalidate');
      const answer = await sendPage(request, html, { status, headers });
      if (isCounted) tellPolicy(answer, context.env);
      return answer;
    });
    app.all(view.page, allowMethods(['GET', 'HEAD']));
  }
}

/** Asks the view; its example, which is asked for uncounted, is reckoned once. */
function holdExample(view: View, endpoints: Endpoints): (query: string) => Seen {
  const ask = (query: string) => askView(view, endpoints, query, { isLenient: true });
  let example: Seen | undefined;
  return (query) => {
    if (query !== '') return ask(query);
    example ??= ask('');
    return example;
  };
}

interface Filling {
  readonly view: Page;
  readonly request: Request;
  /** Absent where nothing may be reckoned. */
  readonly seen: Seen | undefined;
}

/**
 * The page with the result in it. Where the address asks for nothing there is an example for those without
 * scripts alone: for all others the element has one of its own.
 */
function fillPage(html: string, { view, request, seen }: Filling): string {
  if (seen === undefined) return html;
  const { origin } = new URL(request.url);
  const { isExample } = seen;
  const address = `${origin}${view.page}${isExample || !seen.ok ? '' : `?${seen.query}`}`;
  const faulty = listFaulty(seen);
  const asked = writeForm({ view, action: view.page, query: seen.query, faulty, own: [] });
  // Where scripts run the element has the fields, and no field is there twice.
  const form = isExample ? asked : `<noscript>${asked}</noscript>`;
  const result = writeResult(seen, form, isExample);
  return html
    .replace(MARKERS.head, () => (seen.ok ? writeDiscovery(address, seen.telling.title) : ''))
    .replace(MARKERS.result, () => (isExample ? `<noscript>${result}</noscript>` : result));
}

function hasPage(view: View): view is Page {
  return view.page !== undefined;
}

function codesOf(seen: Extract<Seen, { readonly ok: false }>) {
  return seen.faults.map(({ code }) => code);
}
