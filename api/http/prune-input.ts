import type { Path } from '#core/outcome.ts';

/**
 * The input without the parts at fault, so that what is left can still be judged. A fault inside a list
 * takes the whole list with it: a shorter list would mean something else.
 *
 * @example
 * pruneInput({ spare: 'x', washes: 2 }, [['spare']]) // => { washes: 2 }
 * pruneInput({ cuts: [8, true] }, [['cuts', 1]]) // => {}
 */
export function pruneInput(input: unknown, faulty: readonly Path[]): unknown {
  const pruned: unknown = structuredClone(input);
  for (const path of faulty) remove(pruned, path);
  return pruned;
}

function remove(root: unknown, path: Path): void {
  let part = root;
  for (const [depth, key] of path.entries()) {
    if (typeof part !== 'object' || part === null || Array.isArray(part)) return;
    const next: unknown = Reflect.get(part, key);
    if (depth === path.length - 1 || Array.isArray(next)) {
      Reflect.deleteProperty(part, key);
      return;
    }
    part = next;
  }
}
