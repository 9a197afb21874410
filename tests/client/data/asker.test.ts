import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { makeAsker } from '../../../client/data/asker.ts';
import type { Loaded } from '../../../client/data/load-answer.ts';

const answers: ((loaded: Loaded<string>) => void)[] = [];
const ask = vi.fn((_: AbortSignal) => new Promise<Loaded<string>>((done) => answers.push(done)));
const take = vi.fn();
const say = (answer: string): Loaded<string> => ({ kind: 'answer', answer, from: 'service' });

describe('makeAsker', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    answers.length = 0;
    ask.mockClear();
    take.mockClear();
  });
  afterEach(() => vi.useRealTimers());

  test('later asks once, when typing rests', async () => {
    const asker = makeAsker({ ask, take, rest: 300 });
    asker.later();
    await vi.advanceTimersByTimeAsync(200);
    asker.later();
    await vi.advanceTimersByTimeAsync(299);
    expect(ask).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1);
    expect(ask).toHaveBeenCalledOnce();
  });

  test('only the newest question is answered', async () => {
    const asker = makeAsker({ ask, take, rest: 300 });
    asker.now();
    asker.now();
    answers[0]?.(say('old'));
    answers[1]?.(say('new'));
    await vi.advanceTimersByTimeAsync(0);
    expect(take.mock.calls).toEqual([[say('new')]]);
    expect(ask.mock.calls[0]?.[0].aborted).toBe(true);
  });

  test('stop lets go of what was asked and of what was to be', async () => {
    const asker = makeAsker({ ask, take, rest: 300 });
    asker.now();
    asker.later();
    asker.stop();
    answers[0]?.(say('old'));
    await vi.advanceTimersByTimeAsync(1000);
    expect([ask.mock.calls.length, take.mock.calls.length]).toEqual([1, 0]);
  });

  test('a question that fails is nobody to ask', async () => {
    const fail = () => Promise.reject(new Error('broken'));
    makeAsker<string>({ ask: fail, take, rest: 0 }).now();
    await vi.advanceTimersByTimeAsync(0);
    expect(take).toHaveBeenCalledWith({ kind: 'unreachable', trouble: 'silent' });
  });
});
