import { vi } from 'vitest';
import type { Outcome } from '#core/outcome.ts';

/** A service that answers as the core does, over HTTP. */
export function answerAs(compute: (query: string) => Outcome<unknown>) {
  return (url: string): Response => {
    const outcome = compute(new URL(url, location.href).search);
    if (outcome.ok) return Response.json(outcome.value);
    const errors = outcome.faults.map(({ path, ...fault }) => ({
      ...fault,
      pointer: `/${path.join('/')}`,
    }));
    return Response.json({ errors }, { status: 422 });
  };
}

/** Puts a service in the place of the network, and gives what is asked of it. */
export function serve(answer: (url: string) => Response | Promise<Response>): readonly string[] {
  const asked: string[] = [];
  const fetch = async (url: string) => {
    asked.push(url);
    return answer(url);
  };
  vi.stubGlobal('fetch', fetch);
  return asked;
}
