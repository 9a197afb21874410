import { expect, vi } from 'vitest';
import { find } from './render.ts';

/** Touches the entry with a finger, and waits for the eighths that are offered then. */
export async function touchField(root: ParentNode): Promise<void> {
  const whole = globalThis.matchMedia;
  vi.stubGlobal('matchMedia', (query: string) =>
    query === '(pointer:coarse)' ? { matches: true } : whole(query),
  );
  find(root, 'input').focus();
  await expect.poll(() => root.querySelectorAll('.fractions button').length).toBe(7);
  vi.unstubAllGlobals();
}
