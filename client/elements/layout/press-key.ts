import type { LayoutActions } from './layout-context.ts';
import { readKey, type Standing } from './read-key.ts';

/** Undoes with Ctrl and Z, does again with Shift beside them; any other key is left alone. */
export function pressUndo(event: KeyboardEvent, act: Pick<LayoutActions, 'undo' | 'redo'>): void {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
  event.preventDefault();
  if (event.shiftKey) act.redo();
  else act.undo();
}

/** Does what a key means on the grid; one that is not for the grid goes on to the browser. */
export function pressKey(
  event: KeyboardEvent,
  standing: Standing,
  act: Pick<LayoutActions, 'go' | 'tap' | 'pin' | 'letGo'>,
): void {
  const deed = readKey(event, standing);
  if (deed === undefined) return;
  event.preventDefault();
  if (deed.kind === 'go') act.go(deed.to);
  else if (deed.kind === 'let-go') act.letGo();
  else act[deed.kind](standing.at);
}
