import type {
  BatchAnswer,
  BatchRequest,
  KitsAnswer,
  KitsRequest,
  PlanAnswer,
  PlanRequest,
  StashAnswer,
  StashRequest,
  WashAnswer,
  WashRequest,
  YardageAnswer,
  YardageRequest,
} from '#core/contract.ts';
import { readFailure, UnreachableError } from './problem-error.ts';
import { waitFor } from './wait-for.ts';
import { writeAddress } from './write-address.ts';

/** What each address takes and gives. */
export interface Calls {
  readonly '/v1/plan': { readonly request: PlanRequest; readonly answer: PlanAnswer };
  readonly '/v1/yardage': { readonly request: YardageRequest; readonly answer: YardageAnswer };
  readonly '/v1/wash-shrinkage': { readonly request: WashRequest; readonly answer: WashAnswer };
  readonly '/v1/stash': { readonly request: StashRequest; readonly answer: StashAnswer };
  readonly '/v1/kits': { readonly request: KitsRequest; readonly answer: KitsAnswer };
  readonly '/v1/batch': { readonly request: BatchRequest; readonly answer: BatchAnswer };
}

export interface ClientOptions {
  /** Where the service runs, such as `https://quilts.example`. */
  readonly origin: string;
  /** Milliseconds that one try may take; 10 000 unless told. */
  readonly timeout?: number;
  /** Further tries where the service is busy (429 or 503) and nowhere else; 2 unless told. */
  readonly retries?: number;
  /** Longest wait between two tries, ms; 30 000 unless told. */
  readonly patience?: number;
  readonly fetch?: (address: string, init: RequestInit) => Promise<Response>;
}

export interface Client {
  /**
   * Asks one address.
   *
   * @throws {ProblemError} the service said what is wrong
   * @throws {UnreachableError} no answer came that could be read
   */
  readonly ask: <Path extends keyof Calls>(
    path: Path,
    request: Calls[Path]['request'],
    options?: { readonly signal?: AbortSignal },
  ) => Promise<Calls[Path]['answer']>;
  /** The address that asks the same by GET, for a link or an `img`. */
  readonly address: (path: string, request: object) => string;
}

/** Addresses longer than this are asked by POST: some of what lies between cuts longer ones off. */
const LONGEST_ADDRESS = 4096;
const BUSY: readonly number[] = [429, 503];

/**
 * A client of the service: it needs `fetch` and nothing else.
 *
 * @example
 * makeClient({ origin: 'https://quilts.example' }).address('/v1/plan', { target: { size: 'throw' } }) // => 'https://quilts.example/v1/plan?target.size=throw'
 */
export function makeClient(options: ClientOptions): Client {
  const origin = options.origin.replace(/\/+$/, '');
  const address = (path: string, request: object) => `${origin}${writeAddress(path, request)}`;
  return {
    address,
    async ask(path, request, { signal } = {}) {
      const short = path === '/v1/batch' ? undefined : address(path, request);
      const isShort = short !== undefined && short.length <= LONGEST_ADDRESS;
      const response = await askPatiently(
        isShort ? [short, {}] : [`${origin}${path}`, writeBody(request)],
        options,
        signal,
      );
      if (!response.ok) throw await readFailure(response);
      return await response.json().catch((cause: unknown) => {
        throw new UnreachableError('The answer could not be read.', { cause });
      });
    },
  };
}

function writeBody(request: object): RequestInit {
  const headers = { 'Content-Type': 'application/json' };
  return { method: 'POST', headers, body: JSON.stringify(request) };
}

async function askPatiently(
  [address, init]: readonly [string, RequestInit],
  options: ClientOptions,
  signal: AbortSignal | undefined,
): Promise<Response> {
  const { retries = 2, patience = 30_000 } = options;
  for (let tried = 0; ; tried += 1) {
    const response = await askOnce(address, init, options, signal);
    if (!BUSY.includes(response.status) || tried >= retries) return response;
    const told = Number(response.headers.get('Retry-After') ?? Number.NaN) * 1000;
    const wait = Number.isFinite(told) ? told : 500 * 2 ** tried;
    if (wait > patience) return response;
    await response.body?.cancel();
    await waitFor(wait, signal);
  }
}

async function askOnce(
  address: string,
  init: RequestInit,
  { timeout = 10_000, fetch: ask = fetch }: ClientOptions,
  signal: AbortSignal | undefined,
): Promise<Response> {
  const clock = AbortSignal.timeout(timeout);
  const either = signal === undefined ? clock : AbortSignal.any([clock, signal]);
  try {
    return await ask(address, { ...init, signal: either });
  } catch (cause) {
    signal?.throwIfAborted();
    const why = clock.aborted ? `No answer came within ${timeout} ms.` : 'No answer came.';
    throw new UnreachableError(why, { cause });
  }
}
