/** A worker that reads and validates a plan and answers the same bytes whatever was asked. */
import { Hono } from 'hono';
import { planSchema } from '../../api/http/schemas/plan-schema.ts';
import { validate } from '../../api/http/validate.ts';

const app = new Hono();
app.on(
  ['GET', 'POST'],
  '/v1/plan',
  validate({ schema: planSchema, resolve: () => ({ ok: false, faults: [] }) }),
  () => new Response('{}', { headers: { 'Content-Type': 'application/json' } }),
);

export const fetch = app.fetch;
