import { swapBlocks } from '#core/layout/swap-blocks.ts';
import { isPinned, type LayoutDraft, readPins, togglePin } from '../../data/layout-draft.ts';
import { readRows } from '../../data/rows.ts';

/** What a change of the quilt can be undone to. */
export interface Snapshot {
  readonly draft: LayoutDraft;
  /** The grid as it was laid by hand; nothing where it lies as it was worked out. */
  readonly hand: readonly string[] | undefined;
}

/** What a tap on a block does. */
export type TapMode = 'swap' | 'pin';

/** What was last done to the grid, for those who hear it; places count row by row from 0. */
export type Deed =
  | { readonly kind: 'taken' | 'let-go' | 'pinned' | 'unpinned' | 'stuck'; readonly place: number }
  | { readonly kind: 'swapped'; readonly place: number; readonly other: number };

/** What the element knows of the grid beside its question and answer. */
export interface BoardState {
  readonly hand: readonly string[] | undefined;
  /** Where the keyboard stands. */
  readonly at: number;
  /** The block that was picked up. */
  readonly held?: number | undefined;
  readonly mode: TapMode;
  /** Every block as large as a finger, though the grid may be wider than the page; as it fits until somebody chose. */
  readonly isLarge?: boolean | undefined;
  readonly past: readonly Snapshot[];
  readonly future: readonly Snapshot[];
  readonly deed?: Deed | undefined;
}

/** Width that the grid may take until it was measured, CSS pixels: a phone's. */
export const FIRST_ROOM = 320;

/** Before anything was done. */
export const FIRST_BOARD: BoardState = {
  hand: undefined,
  at: 0,
  mode: 'swap',
  past: [],
  future: [],
};

/** Changes that can be undone. */
const MOST_STEPS = 200;

/** The board once a change was made to what is given, which can be undone to. */
export function remember(board: BoardState, before: Snapshot): BoardState {
  return { ...board, past: [...board.past, before].slice(-MOST_STEPS), future: [] };
}

/** The board once something else is asked for: what was laid by hand goes, and can be had again. */
export function layAside(board: BoardState, before: Snapshot): BoardState {
  return {
    ...remember(board, before),
    ...{ hand: undefined, held: undefined, deed: undefined, at: 0 },
  };
}

/** What a tap did: the board, and the draft where its pins changed. */
export interface Tapped {
  readonly board: BoardState;
  readonly draft: LayoutDraft;
}

/** What is tapped, and how the grid lies. */
export interface Tap {
  readonly place: number;
  readonly cells: readonly string[];
  readonly draft: LayoutDraft;
}

/**
 * Taps a block: the first is picked up, the second changes places with it, the same again is let go. A pinned block
 * stays where it is. In the mode for pins it is pinned or let go.
 *
 * @example
 * const tap = (board, place) => tapBlock(board, { place, cells: ['AB'], draft: {} }).board;
 * tap(tap(FIRST_BOARD, 0), 1).hand // => ['BA']
 */
export function tapBlock(board: BoardState, tap: Tap): Tapped {
  const { place, cells, draft } = tap;
  if (board.mode === 'pin') return pinBlock(board, tap);
  const columns = cells[0]?.length ?? 1;
  const at = { ...board, at: place };
  if (isPinned(readPins(draft), columns, place)) {
    return { draft, board: { ...at, deed: { kind: 'stuck', place } } };
  }
  const { held } = board;
  if (held === undefined) {
    return { draft, board: { ...at, held: place, deed: { kind: 'taken', place } } };
  }
  if (held === place) return { draft, board: letGo(at) };
  const deed = { kind: 'swapped', place: held, other: place } as const;
  const hand = swapBlocks(cells, held, place);
  const changed = remember(at, { draft, hand: board.hand });
  return { draft, board: { ...changed, hand, held: undefined, deed } };
}

/** Puts down what was picked up. */
export function letGo(board: BoardState): BoardState {
  const { held } = board;
  const deed = held === undefined ? board.deed : ({ kind: 'let-go', place: held } as const);
  return { ...board, held: undefined, deed };
}

/** Pins a block or lets it go; nothing moves by that, so from now on the grid lies as it does. */
export function pinBlock(board: BoardState, { place, cells, draft }: Tap): Tapped {
  const next = togglePin(draft, cells, place);
  const isOn = isPinned(readPins(next), cells[0]?.length ?? 1, place);
  const deed: Deed = { kind: isOn ? 'pinned' : 'unpinned', place };
  const changed = remember({ ...board, at: place }, { draft, hand: board.hand });
  return { draft: next, board: { ...changed, hand: cells, held: undefined, deed } };
}

/** Goes one step back, or forth again; names and colours stay as they are, as nothing moves by them. */
export function stepBack(
  board: BoardState,
  now: Snapshot,
  isBack: boolean,
): { readonly board: BoardState; readonly snapshot: Snapshot | undefined } {
  const from = isBack ? board.past : board.future;
  const found = from.at(-1);
  if (found === undefined) return { board, snapshot: found };
  const snapshot = { ...found, draft: keepLooks(found.draft, now.draft) };
  const rest = from.slice(0, -1);
  const turned = isBack
    ? { past: rest, future: [...board.future, now] }
    : { past: [...board.past, now], future: rest };
  return {
    board: { ...board, ...turned, hand: snapshot.hand, held: undefined, deed: undefined },
    snapshot,
  };
}

/** A draft with the names and colours that its prints have now, and in the order of now where both have a place. */
function keepLooks(draft: LayoutDraft, now: LayoutDraft): LayoutDraft {
  const prints = Math.min(readRows(draft, 'prints').length, readRows(now, 'prints').length);
  const isLook = (path: string) => Number(/^prints\.(\d+)\.(id|color)$/.exec(path)?.[1]) < prints;
  const rest = Object.entries(draft).filter(([path]) => !isLook(path));
  const kept = Object.entries(now).filter(([path]) => isLook(path) || path in draft);
  return Object.fromEntries([...kept, ...rest]);
}
