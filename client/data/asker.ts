import type { Loaded } from './load-answer.ts';

/** What an element that asks again and again says of itself. */
export interface Asking<Answer> {
  /** One question; the signal stops it when a newer one comes. */
  readonly ask: (signal: AbortSignal) => Promise<Loaded<Answer>>;
  /** What came of the newest question. */
  readonly take: (loaded: Loaded<Answer>) => void;
  /** Milliseconds that typing must rest. */
  readonly rest: number;
}

/** Asks at once, or when typing rests; or leaves it. */
export interface Asker {
  readonly now: () => void;
  readonly later: () => void;
  readonly stop: () => void;
}

/** Keeps questions in order: only the newest is answered, and what was asked before is let go. */
export function makeAsker<Answer>({ ask, take, rest }: Asking<Answer>): Asker {
  let asking = new AbortController();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = () => {
    clearTimeout(timer);
    asking.abort();
  };
  const now = () => {
    stop();
    asking = new AbortController();
    const { signal } = asking;
    void ask(signal).then(
      (loaded) => signal.aborted || take(loaded),
      () => signal.aborted || take({ kind: 'unreachable', trouble: 'silent' }),
    );
  };
  const later = () => {
    stop();
    timer = setTimeout(now, rest);
  };
  return { now, later, stop };
}
