import { answerRequest } from './app.ts';

/** The door of the edge runtime. */
export default { fetch: answerRequest };
