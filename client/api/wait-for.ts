/**
 * Waits, unless somebody gives up meanwhile.
 *
 * @param time ms
 * @param signal rejects with its reason
 */
export function waitFor(time: number, signal: AbortSignal | undefined): Promise<void> {
  return new Promise((resolve, reject) => {
    const giveUp = () => {
      clearTimeout(timer);
      reject(signal?.reason);
    };
    const timer = setTimeout(() => {
      signal?.removeEventListener('abort', giveUp);
      resolve();
    }, time);
    if (signal?.aborted === true) giveUp();
    else signal?.addEventListener('abort', giveUp, { once: true });
  });
}
