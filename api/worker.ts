import { app } from './app.ts';

/** The door of the edge runtime. */
export default { fetch: app.fetch };
