import { Hono } from 'hono';
import { expect, test } from 'vitest';
import { answerCrash } from '../../../api/http/answer-crash.ts';
import { tellRetirement } from '../../../api/http/retirement.ts';
import { sendAlong } from '../../../api/http/send-along.ts';

const headers = tellRetirement({
  deprecated: '2025-01-01',
  sunset: '2025-07-01',
  successor: '/v2/toy',
  more: '/api',
});

test.each([200, 304, 422])(
  'sendAlong puts its headers on an answer of %i and keeps the rest',
  async (status) => {
    const app = new Hono();
    app.use('/toy', sendAlong(headers));
    app.get('/toy', () => new Response(null, { status, headers: { ETag: '"a"' } }));
    app.get('/other', () => new Response());
    app.onError(answerCrash);
    const answer = await app.request('/toy');
    expect(answer.status).toBe(status);
    expect(answer.headers.get('etag')).toBe('"a"');
    expect(answer.headers.get('deprecation')).toBe('@1735689600');
    expect((await app.request('/other')).headers.has('deprecation')).toBe(false);
  },
);
