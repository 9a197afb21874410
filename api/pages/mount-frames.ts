import type { Context, Hono } from 'hono';
import { escapeText } from '#core/drawing/escape-text.ts';
import type { Fault } from '#core/outcome.ts';
import { allowMethods } from '../http/allow-methods.ts';
import { describeCrash } from '../http/answer-crash.ts';
import { makeFrameHeaders } from '../http/headers.ts';
import { refuseExcess, type Surroundings, tellPolicy } from '../http/limit-rate.ts';
import { chooseStatus } from '../http/problem-kinds.ts';
import { askView, type Endpoints, listFaulty, type Seen } from './ask-view.ts';
import { type FrameWishes, readWishes } from './read-wishes.ts';
import { sendPage } from './send-page.ts';
import { splitQuery } from './split-query.ts';
import { VIEWS, type View } from './views.ts';
import { writeForm } from './write-form.ts';
import { writeFrame } from './write-frame.ts';
import { writeResult } from './write-result.ts';
import { hashStyle, writeStyle } from './write-style.ts';

/** A view’s name has letters alone: what has a point or a digit is a file and none of ours. */
const PATH = '/embed/:view{[a-z]+}';

/**
 * Puts a page for frames at `/embed/` and the name of each view. Whoever frames it sees words and never a
 * refused frame: faults, an unknown view, too many requests and a failure of our own are framable too.
 */
export function mountFrames(app: Hono<Surroundings>, endpoints: Endpoints): void {
  app.get(PATH, async (context) => {
    const answer = await answerInWords(context, endpoints);
    tellPolicy(answer, context.env);
    return answer;
  });
  app.all(PATH, allowMethods(['GET', 'HEAD']));
}

async function answerInWords(
  { req, env }: Pick<Context<Surroundings>, 'req' | 'env'>,
  endpoints: Endpoints,
): Promise<Response> {
  try {
    const refusal = await refuseExcess(req.raw, env ?? {});
    if (refusal !== undefined) return await sayRefusal(req.raw, refusal);
    return await answerFrame(req, endpoints);
  } catch (error) {
    const { status, detail, instance } = describeCrash(error);
    return sayWords(req.raw, status, `${detail} (${instance ?? ''})`);
  }
}

async function answerFrame(
  req: Context<Surroundings>['req'],
  endpoints: Endpoints,
): Promise<Response> {
  const { pathname, search } = new URL(req.url);
  const view = VIEWS.find(({ name }) => pathname === `/embed/${name}`);
  if (view === undefined) return sayWords(req.raw, 404, 'There is no such view to embed.');
  const { query, own } = splitQuery(search);
  const { faults, ...wishes } = readWishes(own);
  const seen = addFaults(askView(view, endpoints, query, { isLenient: false }), faults);
  return sendFrame(req.raw, { view, query, own, wishes, seen });
}

interface Shown {
  readonly view: View;
  readonly query: string;
  readonly own: readonly (readonly [string, string])[];
  readonly wishes: Omit<FrameWishes, 'faults'>;
  readonly seen: Seen;
}

async function sendFrame(request: Request, shown: Shown): Promise<Response> {
  const { view, query, own, wishes, seen } = shown;
  const { locked } = wishes;
  const action = `/embed/${view.name}`;
  const asked = {
    ...{ view, action, query: seen.query, own, faulty: listFaulty(seen) },
    ...(locked !== undefined && { locked }),
  };
  const style = writeStyle(wishes);
  const { origin, href } = new URL(request.url);
  const html = writeFrame({
    ...{ address: href, view, query, wishes, style, isWhole: seen.ok },
    title: seen.ok ? seen.telling.title : 'This cannot be worked out yet',
    result: writeResult(seen, writeForm(asked)),
  });
  const headers = makeFrameHeaders(origin, style === '' ? '' : await hashStyle(style));
  const status = seen.ok ? 200 : chooseStatus(seen.faults.map(({ code }) => code));
  return sendPage(request, html, { status, headers });
}

function addFaults(seen: Seen, faults: readonly Fault[]): Seen {
  if (faults.length === 0) return seen;
  const { query, isExample } = seen;
  return { ok: false, isExample, query, faults: [...(seen.ok ? [] : seen.faults), ...faults] };
}

async function sayRefusal(request: Request, refusal: Response): Promise<Response> {
  const { detail } = (await refusal.json()) as { readonly detail: string };
  const said = await sayWords(request, refusal.status, detail);
  said.headers.set('Retry-After', refusal.headers.get('Retry-After') ?? '');
  return said;
}

/** A frame with one sentence in it. */
function sayWords(request: Request, status: number, words: string): Promise<Response> {
  const html = writeFrame({
    ...{
      address: request.url,
      title: 'Nothing to show',
      isWhole: false,
      query: '',
      wishes: {},
      style: '',
    },
    result: `<p class="told" lang="en">${escapeText(words)}</p>`,
  });
  const { origin } = new URL(request.url);
  return sendPage(request, html, { status, headers: makeFrameHeaders(origin) });
}
