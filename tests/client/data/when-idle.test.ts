import { afterEach, describe, expect, test, vi } from 'vitest';
import { whenIdle } from '../../../client/data/when-idle.ts';

describe('whenIdle', () => {
  afterEach(() => vi.unstubAllGlobals());

  test('whenIdle(task) waits until the browser says that it is idle', () => {
    const waiting: (() => void)[] = [];
    vi.stubGlobal('requestIdleCallback', (task: () => void) => waiting.push(task));
    const task = vi.fn();
    whenIdle(task);
    expect(task).not.toHaveBeenCalled();
    waiting[0]?.();
    expect(task).toHaveBeenCalledTimes(1);
  });

  test('whenIdle(task) comes to it soon where the browser cannot tell', async () => {
    vi.stubGlobal('requestIdleCallback', undefined);
    const task = vi.fn();
    whenIdle(task);
    expect(task).not.toHaveBeenCalled();
    await expect.poll(() => task.mock.calls.length).toBe(1);
  });
});
