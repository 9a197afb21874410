import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeBoard, weighHarm } from '#core/layout/board.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { relay, tallyBoard, weighSwap } from '#core/layout/tally-board.ts';
import { anyTask, fillBoard } from '../../support/boards.ts';

describe('relay', () => {
  test('relay keeps a tally that counting anew would give', () => {
    fc.assert(
      fc.property(
        anyTask(),
        fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 20 }),
        (task, moves) => {
          const board = fillBoard(makeBoard(task), startRandom(1));
          const tally = tallyBoard(board);
          for (const [at, print] of moves) {
            const place = board.places[at % board.places.length] ?? 0;
            relay(board, tally, place, print % board.prints);
          }
          const anew = tallyBoard(board);
          expect(tally.rows).toEqual(anew.rows);
          expect(tally.columns).toEqual(anew.columns);
          for (const place of board.places) {
            const from = place * board.prints;
            const own = tally.near.slice(from, from + board.prints);
            expect(own).toEqual(anew.near.slice(from, from + board.prints));
          }
        },
      ),
    );
  });
});

describe('weighSwap', () => {
  test('weighSwap foretells by how much the harm grows, neighbours among them', () => {
    fc.assert(
      fc.property(anyTask(), fc.nat(), fc.nat(), (task, first, second) => {
        const board = fillBoard(makeBoard(task), startRandom(2));
        const one = board.places[first % board.places.length] ?? 0;
        const other = board.places[second % board.places.length] ?? 0;
        const [a = 0, b = 0] = [board.cells[one], board.cells[other]];
        fc.pre(a !== b);
        const before = weighHarm(board);
        const growth = weighSwap(board, tallyBoard(board), one, other);
        board.cells[one] = b;
        board.cells[other] = a;
        expect(weighHarm(board) - before).toBe(growth);
      }),
    );
  });
});
