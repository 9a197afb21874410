import { expect, test, vi } from 'vitest';
import { watchPrint } from '../../../../client/elements/layout/watch-print.ts';

test('watchPrint tells when printing begins and ends, and nothing once it is stopped', () => {
  const tell = vi.fn();
  const { start, stop } = watchPrint(tell);
  const print = (name: string) => globalThis.dispatchEvent(new Event(name));
  start();
  print('beforeprint');
  print('afterprint');
  stop();
  print('beforeprint');
  expect(tell.mock.calls).toEqual([[true], [false]]);
});
