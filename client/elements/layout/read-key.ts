/** What a key does on the grid. */
export type KeyDeed =
  | { readonly kind: 'go'; readonly to: number }
  | { readonly kind: 'tap' | 'pin' | 'let-go' };

/** A key as a browser tells it. */
export interface Key {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** Where the keyboard stands, in a grid of so many blocks. */
export interface Standing {
  readonly at: number;
  readonly columns: number;
  readonly rows: number;
}

/**
 * What a key does, by the pattern of a grid of the ARIA Authoring Practices: arrows by one, Home and End along the row,
 * with Ctrl over the whole grid; Enter or the space bar takes up and puts down, P pins, Escape lets go.
 *
 * @returns nothing where the key is not for the grid, so that the browser has it.
 *
 * @example
 * readKey({ key: 'ArrowDown', ctrlKey: false, metaKey: false }, { at: 1, columns: 3, rows: 2 }) // => { kind: 'go', to: 4 }
 */
export function readKey(
  { key, ctrlKey, metaKey }: Key,
  { at, columns, rows }: Standing,
): KeyDeed | undefined {
  const row = Math.floor(at / columns);
  const column = at % columns;
  const isFar = ctrlKey || metaKey;
  const go = (down: number, across: number): KeyDeed => ({
    kind: 'go',
    to:
      Math.min(Math.max(down, 0), rows - 1) * columns + Math.min(Math.max(across, 0), columns - 1),
  });
  if (key === 'ArrowUp') return go(row - 1, column);
  if (key === 'ArrowDown') return go(row + 1, column);
  if (key === 'ArrowLeft') return go(row, column - 1);
  if (key === 'ArrowRight') return go(row, column + 1);
  if (key === 'Home') return go(isFar ? 0 : row, 0);
  if (key === 'End') return go(isFar ? rows - 1 : row, columns - 1);
  if (isFar) return undefined;
  if (key === 'Enter' || key === ' ') return { kind: 'tap' };
  if (key === 'p' || key === 'P') return { kind: 'pin' };
  return key === 'Escape' ? { kind: 'let-go' } : undefined;
}
