import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LayoutDraft, readPins } from '../../../../client/data/layout-draft.ts';
import {
  type BoardState,
  FIRST_BOARD,
  layAside,
  letGo,
  pinBlock,
  remember,
  stepBack,
  tapBlock,
} from '../../../../client/elements/layout/layout-state.ts';

const CELLS = ['ABC', 'BCA'];

/** Taps one block after another, the grid and the pins going on from tap to tap. */
function play(places: readonly number[], start: Partial<BoardState> = {}, given: LayoutDraft = {}) {
  let board: BoardState = { ...FIRST_BOARD, ...start };
  let draft = given;
  for (const place of places) {
    ({ board, draft } = tapBlock(board, { place, cells: board.hand ?? CELLS, draft }));
  }
  return { board, draft };
}

describe('tapBlock', () => {
  test('tapBlock takes up the first block and has the second change places with it', () => {
    const { board } = play([0]);
    expect([board.held, board.hand, board.past]).toEqual([0, undefined, []]);
    const { board: next } = play([0, 4]);
    expect(next.hand).toEqual(['CBC', 'BAA']);
    expect([next.held, next.at]).toEqual([undefined, 4]);
    expect(next.deed).toEqual({ kind: 'swapped', place: 0, other: 4 });
    expect(next.past).toHaveLength(1);
  });

  test('tapBlock on the block in hand puts it down, and that is no change to undo', () => {
    const { board } = play([3, 3]);
    expect([board.held, board.hand, board.past]).toEqual([undefined, undefined, []]);
    expect(board.deed).toEqual({ kind: 'let-go', place: 3 });
  });

  test('tapBlock leaves a pinned block where it is, whether it is taken first or last', () => {
    const pins = { 'fixed.0': 'A..', 'fixed.1': '...' };
    for (const places of [
      [0, 1],
      [1, 0],
    ]) {
      const { board } = play(places, {}, pins);
      expect(board.hand).toBeUndefined();
    }
    expect(play([0], {}, pins).board.deed).toEqual({ kind: 'stuck', place: 0 });
  });

  test('tapBlock in the mode for pins pins, and moves nothing', () => {
    const { board, draft } = play([4], { mode: 'pin' });
    expect(readPins(draft)).toEqual(['...', '.C.']);
    expect([board.hand, board.held]).toEqual([CELLS, undefined]);
  });

  test('tapBlock keeps the blocks of every print, whatever is tapped', () => {
    const letters = (cells: readonly string[]) => [...cells.join('')].sort().join('');
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5 }), { maxLength: 30 }), (places) => {
        expect(letters(play(places).board.hand ?? CELLS)).toBe(letters(CELLS));
      }),
    );
  });
});

describe('pinBlock and letGo', () => {
  test('pinBlock pins, lets go again, and each can be undone', () => {
    const tap = { place: 2, cells: CELLS, draft: {} };
    const pinned = pinBlock(FIRST_BOARD, tap);
    expect(pinned.board.deed).toEqual({ kind: 'pinned', place: 2 });
    const free = pinBlock(pinned.board, { ...tap, draft: pinned.draft });
    expect(free.board.deed).toEqual({ kind: 'unpinned', place: 2 });
    expect(free.draft).toEqual({});
    expect(free.board.past.map(({ draft }) => readPins(draft))).toEqual([[], ['..C', '...']]);
  });

  test('letGo of nothing leaves what was last done', () => {
    const board: BoardState = { ...FIRST_BOARD, deed: { kind: 'pinned', place: 1 } };
    expect(letGo(board).deed).toEqual({ kind: 'pinned', place: 1 });
  });
});

describe('remember and stepBack', () => {
  test('stepBack undoes and does again, as often as there were changes', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5 }), { maxLength: 20 }), (places) => {
        const { board, draft } = play(places);
        const now = { draft, hand: board.hand };
        let back = { board, snapshot: now as typeof now | undefined };
        let here = now;
        for (let step = board.past.length; step > 0; step -= 1) {
          back = stepBack(back.board, here, true);
          here = back.snapshot ?? here;
        }
        expect(here.hand).toBeUndefined();
        for (let step = board.past.length; step > 0; step -= 1) {
          back = stepBack(back.board, here, false);
          here = back.snapshot ?? here;
        }
        expect([here.hand, back.board.future]).toEqual([board.hand, []]);
      }),
    );
  });

  test('layAside lets go of what a hand laid, and stepBack has it again', () => {
    const hand = ['BAC', 'BCA'];
    const board = layAside({ ...FIRST_BOARD, hand, held: 2, at: 5 }, { draft: {}, hand });
    expect([board.hand, board.held, board.at]).toEqual([undefined, undefined, 0]);
    const back = stepBack(board, { draft: { seed: '2' }, hand: undefined }, true);
    expect([back.board.hand, back.snapshot?.draft]).toEqual([hand, {}]);
  });

  test('stepBack keeps the names and colours of now, and of prints that are gone those of then', () => {
    const then = { columns: '3', 'prints.0.id': 'A', 'prints.1.id': 'B', 'prints.2.id': 'Oat' };
    const now = {
      ...{ columns: '3', rows: '2', 'prints.0.id': 'Fern', 'prints.1.id': 'B' },
      ...{ 'prints.1.color': '#123456', 'prints.0.count': '4' },
    };
    const board = remember(FIRST_BOARD, { draft: then, hand: undefined });
    const back = stepBack(board, { draft: now, hand: undefined }, true);
    const looks = { 'prints.0.id': 'Fern', 'prints.1.color': '#123456' };
    expect(back.snapshot?.draft).toEqual({ ...then, ...looks });
    const forth = stepBack(back.board, { draft: { ...then, ...looks }, hand: undefined }, false);
    expect(forth.snapshot?.draft).toEqual(now);
  });

  test('stepBack takes a print away again, name and colour with it', () => {
    const draft = { 'prints.0.id': 'A', 'prints.1.id': 'B' };
    const now = { ...draft, 'prints.2.id': 'Oat', 'prints.2.color': '#123456' };
    const board = remember(FIRST_BOARD, { draft, hand: undefined });
    expect(stepBack(board, { draft: now, hand: undefined }, true).snapshot?.draft).toEqual(draft);
  });

  test('stepBack without a step leaves all as it is', () => {
    const now = { draft: {}, hand: undefined };
    expect(stepBack(FIRST_BOARD, now, true)).toEqual({ board: FIRST_BOARD, snapshot: undefined });
  });

  test('remember forgets what was undone, and what lies two hundred changes back', () => {
    const step = { draft: {}, hand: undefined };
    let board: BoardState = { ...FIRST_BOARD, future: [step] };
    for (let times = 0; times < 250; times += 1) board = remember(board, step);
    expect([board.past.length, board.future]).toEqual([200, []]);
  });
});
