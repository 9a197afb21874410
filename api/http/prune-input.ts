import type { Path } from '#core/outcome.ts';

/** Text that is no length. */
const STAND_IN = '?';

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

/**
 * The input with a text that is no length at each place, so that a target of two sides stays one while a
 * side is at fault, and the core judges nothing by what it cannot read. Lists stay as they are.
 *
 * @example
 * fillInput({ target: { width: 40 } }, [['target', 'height']]) // => { target: { width: 40, height: '?' } }
 */
export function fillInput(input: unknown, places: readonly Path[]): unknown {
  const filled: unknown = structuredClone(input);
  for (const path of places) fill(filled, path);
  return filled;
}

function fill(root: unknown, path: Path): void {
  const owner = path
    .slice(0, -1)
    .reduce<unknown>((part, key) => (isGroup(part) ? Reflect.get(part, key) : undefined), root);
  const last = path.at(-1);
  if (isGroup(owner) && last !== undefined) Reflect.set(owner, last, STAND_IN);
}

function remove(root: unknown, path: Path): void {
  let part = root;
  for (const [depth, key] of path.entries()) {
    if (!isGroup(part)) return;
    const next: unknown = Reflect.get(part, key);
    if (depth === path.length - 1 || Array.isArray(next)) {
      Reflect.deleteProperty(part, key);
      return;
    }
    part = next;
  }
}

function isGroup(part: unknown): part is object {
  return typeof part === 'object' && part !== null && !Array.isArray(part);
}
