import type * as z from 'zod/mini';
import type { Outcome } from '#core/outcome.ts';

/** What the core makes of a request before it reckons: enough to name the answer without having it. */
export interface Resolved {
  /** Canonical query: the same for every spelling of one input. */
  readonly query: string;
}

/** One way to ask for something: what may be asked, how it is understood, what comes back. */
export interface Endpoint<Request, Understood extends Resolved> {
  readonly path: `/${string}`;
  /** One sentence for the documents: what it is for. */
  readonly summary: string;
  /** Gives the same schema each time, made when it is first asked for. */
  readonly schema: () => z.ZodMiniType<Request>;
  /** All rules that no schema can say, and every default. */
  readonly resolve: (request: Request) => Outcome<Understood>;
  readonly mediaType: string;
  /**
   * What reckoning it costs, in points: about a tenth of a millisecond each on a common machine.
   * Known before anything is reckoned; 10 unless told.
   */
  readonly cost?: (understood: Understood) => number;
  /** The body of the answer, which can no longer fail. */
  readonly write: (understood: Understood) => string;
}
