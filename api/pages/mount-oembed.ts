import type { Hono } from 'hono';
import { escapeText } from '#core/drawing/escape-text.ts';
import { fail, type Outcome, succeed } from '#core/outcome.ts';
import { allowMethods } from '../http/allow-methods.ts';
import { CACHED_HEADERS } from '../http/headers.ts';
import { limitRate, type Surroundings } from '../http/limit-rate.ts';
import { answerProblem, writeKindOfProblem } from '../http/problem.ts';
import { askView, type Endpoints } from './ask-view.ts';
import { type OembedAsk, readOembed } from './read-oembed.ts';
import { readWishes } from './read-wishes.ts';
import { sendPage } from './send-page.ts';
import { splitQuery } from './split-query.ts';
import { writeOembedXml } from './write-oembed-xml.ts';

const PATH = '/oembed';

/** Pixels that a frame is wide where more is allowed. */
const WIDTH = 700;

/** Below this width fields stand under one another, and a frame is as high as any blog lets it be. */
const NARROW = { width: 500, height: 1000 } as const;

/** How long a consumer may keep an answer, in seconds: as long as any cache may. */
const AGE = 86_400;

/** The formats of the standard: how each is written, and its media type. */
const FORMATS: ReadonlyMap<string, readonly [write: typeof writeOembedXml, mediaType: string]> =
  new Map([
    ['json', [(fields) => JSON.stringify(fields), 'application/json']],
    ['xml', [writeOembedXml, 'text/xml; charset=utf-8']],
  ]);

/**
 * Tells whoever is given an address of ours how to embed it, after oEmbed 1.0 (https://oembed.com). The
 * HTML is one frame and nothing else: blogs that filter it keep a frame alone.
 */
export function mountOembed(app: Hono<Surroundings>, endpoints: Endpoints): void {
  app.get(PATH, limitRate(), async ({ req }) => {
    const ask = readOembed(new URL(req.url));
    if (!ask.ok) return answerProblem(ask.faults, { fromQuery: true });
    const format = FORMATS.get(ask.value.format);
    if (format === undefined) {
      return writeKindOfProblem('unknown-format', { detail: 'Ask for format=json or format=xml.' });
    }
    const fields = describeFrame(ask.value, endpoints);
    if (!fields.ok) return answerProblem(fields.faults, { fromQuery: true });
    const [write, mediaType] = format;
    const headers = { ...CACHED_HEADERS, 'Content-Type': mediaType };
    return sendPage(req.raw, write(fields.value), { status: 200, headers });
  });
  app.all(PATH, allowMethods(['GET', 'HEAD']));
}

function describeFrame(
  ask: OembedAsk,
  endpoints: Endpoints,
): Outcome<Record<string, string | number>> {
  const { address, origin, view, most } = ask;
  const isFrame = address.pathname.startsWith('/embed/');
  const { query, own } = splitQuery(address.search);
  const wishes = isFrame ? own : [];
  const { faults } = readWishes(wishes);
  const seen = askView(view, endpoints, query, { isLenient: !isFrame });
  if (!seen.ok || faults.length > 0) return fail([...(seen.ok ? [] : seen.faults), ...faults]);
  const asked = seen.isExample ? '' : seen.query;
  const carried = wishes.map(([name, value]) => `_${name}=${encodeURIComponent(value)}`);
  const search = [asked, ...carried].filter((part) => part !== '').join('&');
  const source = `${origin}/embed/${view.name}${search === '' ? '' : `?${search}`}`;
  const width = Math.min(WIDTH, most.width);
  const height = Math.min(width < NARROW.width ? NARROW.height : view.height, most.height);
  const { title } = seen.telling;
  return succeed({
    ...{ version: '1.0', type: 'rich', title },
    ...{ provider_name: 'Ragbloom', provider_url: origin, cache_age: AGE },
    ...{ width, height },
    html: `<iframe src="${escapeText(source)}" width="${width}" height="${height}" frameborder="0" title="${escapeText(title)}"></iframe>`,
  });
}
