import type { FaultCode } from '#core/faults.ts';
import { readWish } from '#core/wish/read-wish.ts';
import { app } from '../../api/app.ts';
import { answerProblem } from '../../api/http/problem.ts';
import { makeToyApp } from '../support/toy-endpoint.ts';

const headers = { 'Content-Type': 'application/json' };
const target = { width: 40, height: 50 };

const get = (path: string) => () => app.request(path);
const send =
  (path: string, body: string, own: Record<string, string> = headers) =>
  () =>
    app.request(path, { method: 'POST', headers: own, body });
const plan = (input: object) => send('/v1/plan', JSON.stringify({ target, ...input }));
const kits = (input: object) =>
  send(
    '/v1/kits',
    JSON.stringify({
      plan: { target },
      bolts: [{ id: 'a', role: 'top', width: 44, length: 360, cost: 500 }],
      ...input,
    }),
  );
const top = { role: 'top' };
const backing = { role: 'backing' };

/** For each fault code a request that provokes it, through the public door wherever there is one. */
export const FAULT_CASES: Readonly<Record<FaultCode, () => Response | Promise<Response>>> = {
  'malformed-json': send('/v1/plan', '{'),
  'malformed-query': get('/v1/plan?target.size=lap&cuts.1=8'),
  'wrong-content-type': send('/v1/plan', '{}', { 'Content-Type': 'text/plain' }),
  'body-too-large': send('/v1/plan', ' '.repeat(65_537)),
  'too-deep': send('/v1/plan', '['.repeat(13)),
  'not-found': get('/nothing'),
  'wrong-method': () => app.request('/v1/plan', { method: 'PATCH' }),
  // No request is known that brings it about: a toy breaks down on purpose.
  internal: () => makeToyApp().request('/toy?id=a&crash=true'),
  'unknown-key': plan({ colour: 'red' }),
  'repeated-key': get('/v1/plan?target.size=throw&target.size=lap'),
  missing: send('/v1/plan', '{"target":{"width":40}}'),
  'wrong-type': plan({ explain: 'yes' }),
  'not-one-of': plan({ unit: 'ft' }),
  empty: plan({ block: { seam: '' } }),
  'too-short': plan({ cuts: [] }),
  'too-long': plan({ block: { seam: '1'.repeat(33) } }),
  'not-whole': plan({ washes: 1.5 }),
  'too-small': plan({ block: { snipPitch: '0.5 mm' } }),
  'too-large': plan({ spare: 101 }),
  'bad-name': plan({ layers: [{ ...top, prints: [{ id: 'a\nb' }] }, backing] }),
  'not-a-length': plan({ block: { cut: 'broad' } }),
  'unclear-comma': plan({ stitch: { bobbin: '1,250' } }),
  'negative-length': plan({ block: { cut: -8 } }),
  'zero-parts': plan({ block: { cut: '8 1/0' } }),
  'two-lengths': plan({ block: { cut: '8 x 8' } }),
  'unknown-unit': plan({ block: { cut: '8 ells' } }),
  'target-unclear': get('/v1/plan'),
  'size-not-in-region': plan({ target: { size: 'california-king', region: 'eu' } }),
  'seam-eats-face': plan({ block: { cut: 4, seam: 2 } }),
  'snips-reach-stitching': plan({ block: { snipDepth: 1 } }),
  'roll-too-narrow': plan({ block: { cut: 12 }, layers: [{ ...top, width: 10 }, backing] }),
  'layers-unfit': plan({ layers: [top, top] }),
  'repeated-id': plan({ layers: [{ ...top, prints: [{ id: 'a' }, { id: 'a' }] }, backing] }),
  'counts-do-not-sum': plan({
    target: { columns: 2, rows: 2 },
    layers: [{ ...top, prints: [{ id: 'a', count: 3 }] }, backing],
  }),
  'quilt-too-large': plan({ target: { columns: 100, rows: 100 } }),
  'after-unlikely': send(
    '/v1/wash-shrinkage',
    '{"swatches":[{"direction":"length","before":10,"after":30}]}',
  ),
  // Words are read in the page, and no endpoint takes them.
  'wish-unclear': () => {
    const read = readWish('something cosy', 'in');
    return read.ok ? new Response() : answerProblem(read.faults);
  },
  'mixed-currencies': kits({
    bolts: [{ id: 'a', role: 'top', width: 44, length: 360, cost: 500, currency: 'EUR' }],
    currency: 'GBP',
  }),
  'price-unclear': kits({ costs: { margin: 40, markup: 50 } }),
  'percents-do-not-sum': kits({ fibres: { top: [{ fibre: 'cotton', percent: 90 }] } }),
};
