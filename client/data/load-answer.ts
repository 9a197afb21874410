import type { Fault, Outcome } from '#core/outcome.ts';
import { whenIdle } from './when-idle.ts';

/** Where answers come from. */
export interface Source<Core> {
  /** Origin of the service, without a slash at its end; empty for the page's own. */
  readonly api: string;
  /** Fetches what can work an answer out on the device. */
  readonly loadCore: () => Promise<Core>;
  /** Milliseconds after which the device is quicker. */
  readonly patience: number;
  /** Fetch that too once the service has answered, so that a network lost later is no loss. */
  readonly isAhead?: boolean;
}

/** What is asked, and of whom. */
export interface Question<Answer, Core> {
  /** Path and query, such as `/v1/plan?target.size=lap`. */
  readonly address: string;
  /** How to ask where the address alone does not say it, such as by posting what is too long for one. */
  readonly init?: RequestInit;
  /** Whether all is there that the page reads of an answer. */
  readonly isAnswer: (body: unknown) => body is Answer;
  /** The same question to the core. */
  readonly compute: (core: Core) => Outcome<Answer>;
}

/** An answer and who worked it out; or what is wrong with the question; or nobody to ask. */
export type Loaded<Answer> =
  | { readonly kind: 'answer'; readonly answer: Answer; readonly from: 'service' | 'device' }
  | { readonly kind: 'faults'; readonly faults: readonly Fault[] }
  | { readonly kind: 'unreachable'; readonly trouble: Trouble };

/** Nobody answers; too much was asked; the service broke; its answer is of a kind that this page does not know. */
export type Trouble = 'silent' | 'busy' | 'broken' | 'strange';

/**
 * Asks the service; where that gives no answer in time, or none that can be read, the core works it out in the page.
 *
 * @param signal stops the asking when a newer question came; the promise then rejects.
 */
export async function loadAnswer<Answer, Core>(
  question: Question<Answer, Core>,
  source: Source<Core>,
  signal: AbortSignal,
): Promise<Loaded<Answer>> {
  const asked = await askService(question, source, signal).catch(() => SILENT);
  signal.throwIfAborted();
  if (asked.kind !== 'unreachable') {
    if (source.isAhead) whenIdle(() => void source.loadCore().catch(() => undefined));
    return asked;
  }
  try {
    const core = await source.loadCore();
    signal.throwIfAborted();
    const outcome = question.compute(core);
    return outcome.ok
      ? { kind: 'answer', answer: outcome.value, from: 'device' }
      : { kind: 'faults', faults: outcome.faults };
  } catch {
    signal.throwIfAborted();
    return asked;
  }
}

const SILENT = { kind: 'unreachable', trouble: 'silent' } as const;

async function askService<Answer, Core>(
  { address, init, isAnswer }: Question<Answer, Core>,
  { api, patience }: Source<Core>,
  signal: AbortSignal,
): Promise<Loaded<Answer>> {
  const response = await fetch(api + address, {
    ...init,
    signal: AbortSignal.any([signal, AbortSignal.timeout(patience)]),
  });
  if (response.status === 429) return { kind: 'unreachable', trouble: 'busy' };
  if (response.status >= 500) return { kind: 'unreachable', trouble: 'broken' };
  const body: unknown = await response.json().catch(passOver);
  if (response.ok && isAnswer(body)) return { kind: 'answer', answer: body, from: 'service' };
  const faults = response.ok ? undefined : (await import('./read-problem.ts')).readProblem(body);
  return faults === undefined
    ? { kind: 'unreachable', trouble: 'strange' }
    : { kind: 'faults', faults };
}

/** What is no JSON is read as nothing; what broke off on its way is no answer at all. */
function passOver(error: unknown): undefined {
  if (!(error instanceof SyntaxError)) throw error;
}
