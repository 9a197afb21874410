import { Hono } from 'hono';

/** Version of the service, as `/health` tells it: that of package.json. */
export const version = '0.1.0';

/** The whole API: every endpoint, in the order a request meets them. */
export const app = new Hono();

app.get('/health', (context) => context.json({ ok: true, version }));
