import { Hono } from 'hono';
import { bindBatch } from './endpoints/batch.ts';
import { kits } from './endpoints/kits.ts';
import { layout } from './endpoints/layout.ts';
import { plan } from './endpoints/plan.ts';
import { stash } from './endpoints/stash.ts';
import { washShrinkage } from './endpoints/wash-shrinkage.ts';
import { yardage } from './endpoints/yardage.ts';
import { allowMethods } from './http/allow-methods.ts';
import { answerCrash } from './http/answer-crash.ts';
import type { BoundEndpoint } from './http/bind-endpoint.ts';
import { UNCACHED_HEADERS } from './http/headers.ts';
import { holdAnswers } from './http/hold-answers.ts';
import type { Surroundings } from './http/limit-rate.ts';
import { answerNotFound } from './pages/answer-not-found.ts';
import { layoutPicture } from './pages/layout-picture.ts';
import { mountDocuments } from './pages/mount-documents.ts';
import { mountFrames } from './pages/mount-frames.ts';
import { mountOembed } from './pages/mount-oembed.ts';
import { mountPages } from './pages/mount-pages.ts';
import { mountProblemPages } from './pages/mount-problem-pages.ts';
import { planPicture } from './pages/plan-picture.ts';
import { yardagePicture } from './pages/yardage-picture.ts';

/** Version of the service, as `/health` tells it: that of package.json. */
export const version = '0.1.0';

/** Every endpoint; where a new one is added. */
export const ENDPOINTS: readonly BoundEndpoint[] = [
  plan,
  yardage,
  washShrinkage,
  stash,
  kits,
  layout,
  planPicture,
  layoutPicture,
  yardagePicture,
];

/** Many of them at once. */
export const batch = bindBatch(ENDPOINTS);

/** The whole API, in the order a request meets it: endpoints, pages, nothing found, a bug. */
export const app = new Hono<Surroundings>();

for (const endpoint of ENDPOINTS) endpoint.mount(app);
batch.mount(app);
mountProblemPages(app);
mountDocuments(app);
mountFrames(app, ENDPOINTS);
mountOembed(app, ENDPOINTS);
mountPages(app, ENDPOINTS);
app.get('/health', (context) => context.json({ ok: true, version }, 200, UNCACHED_HEADERS));
app.all('/health', allowMethods(['GET', 'HEAD']));
app.notFound(({ req }) => answerNotFound(req.raw));
app.onError(answerCrash);

/** The door that every runtime opens: what is held, or the whole way. */
export const answerRequest = holdAnswers(app.fetch);
