import { expect, test, vi } from 'vitest';

test('run-offline has the browser keep the page', async () => {
  const register = vi.fn(() => Promise.reject(new DOMException('No', 'SecurityError')));
  vi.spyOn(navigator, 'serviceWorker', 'get').mockReturnValue({
    register,
  } as unknown as ServiceWorkerContainer);
  await import('../../../client/offline/run-offline.ts');
  await vi.waitFor(() => expect(register).toHaveBeenCalledOnce());
});
