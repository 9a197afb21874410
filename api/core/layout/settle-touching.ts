import type { Grid } from '../block/size-quilt.ts';
import type { Touch } from '../contract.ts';

/** Work that one attempt may cost: cells looked at. */
const MOST_LOOKS = 150_000;
/** Other cells tried as partners of one that touches. */
const PARTNERS = 24;
/** Steps for which a cell that was changed stays as it is. */
const REST = 6;

/** A quilt being settled: prints cell by cell, and blocks of each print not laid. */
interface Table extends Grid {
  readonly cells: number[];
  readonly spare: number[];
  readonly around: readonly (readonly [down: number, across: number])[];
}

/** Changing a cell into another print, or two cells for each other. */
interface Change {
  readonly cell: number;
  readonly print: number;
  readonly partner?: number;
  readonly gain: number;
}

const SIDES = [
  [0, 1],
  [0, -1],
  [1, 0],
  [-1, 0],
] as const;
const CORNERS = [
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
] as const;

/**
 * Changes blocks that touch their like until none does: the best of a few changes at a time, to a
 * print of which there are blocks left or in exchange with another cell (min-conflicts with a short
 * rest for changed cells). Chance comes from a fixed series and work is counted in cells looked at,
 * so the outcome is the same everywhere. No proof that nothing would do where it gives up.
 *
 * @param laid the print of each cell, row by row
 * @param supply blocks there are of each print, at least those laid
 * @returns the print of each cell with nothing touching; nothing where it gave up
 *
 * @example
 * settleTouching([[0, 0, 1]], [2, 1], 'sides') // => [[0, 1, 0]]
 */
export function settleTouching(
  laid: readonly (readonly number[])[],
  supply: readonly number[],
  touch: Touch,
): readonly (readonly number[])[] | undefined {
  const cells = laid.flat();
  const columns = laid[0]?.length ?? 0;
  const spare = supply.map((blocks, print) => blocks - cells.filter((p) => p === print).length);
  const around = touch === 'sides' ? SIDES : [...SIDES, ...CORNERS];
  const table: Table = { columns, rows: laid.length, cells, spare, around };
  const next = makeSeries();
  const resting = new Map<number, number>();
  const steps = Math.floor(MOST_LOOKS / (cells.length + 200));
  for (let step = 0; step <= steps; step += 1) {
    const touching = cells.flatMap((print, cell) =>
      countLike(table, cell, print) > 0 ? [cell] : [],
    );
    if (touching.length === 0) return toRows(table);
    const awake = touching.filter((cell) => (resting.get(cell) ?? -1) < step);
    const cell = (awake.length > 0 ? awake : touching)[next(awake.length || touching.length)] ?? 0;
    const change = findChange(table, cell, next);
    if (change === undefined) continue;
    apply(table, change);
    resting.set(cell, step + REST);
  }
  return undefined;
}

/** A fixed series of numbers below a bound (a linear congruence, Numerical Recipes' constants). */
function makeSeries(): (below: number) => number {
  let state = 20_011;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

function countLike(table: Table, cell: number, print: number, passing = -1): number {
  const row = Math.floor(cell / table.columns);
  const column = cell % table.columns;
  let like = 0;
  for (const [down, across] of table.around) {
    const [y, x] = [row + down, column + across];
    if (y < 0 || x < 0 || y >= table.rows || x >= table.columns) continue;
    const other = y * table.columns + x;
    if (other !== passing && table.cells[other] === print) like += 1;
  }
  return like;
}

function findChange(
  table: Table,
  cell: number,
  next: (below: number) => number,
): Change | undefined {
  const own = table.cells[cell] ?? 0;
  const before = countLike(table, cell, own);
  let best: Change | undefined;
  const offer = (change: Change) => {
    if (best === undefined || change.gain > best.gain) best = change;
  };
  for (const [print, spare] of table.spare.entries()) {
    if (spare <= 0 || print === own) continue;
    offer({ cell, print, gain: before - countLike(table, cell, print) });
  }
  for (let tried = 0; tried < PARTNERS; tried += 1) {
    const partner = next(table.cells.length);
    const print = table.cells[partner] ?? own;
    if (print === own) continue;
    const after = countLike(table, cell, print, partner) + countLike(table, partner, own, cell);
    const gain = before + countLike(table, partner, print) - after;
    offer({ cell, print, partner, gain });
  }
  return best;
}

function apply({ cells, spare }: Table, { cell, print, partner }: Change): void {
  const own = cells[cell] ?? 0;
  cells[cell] = print;
  if (partner !== undefined) {
    cells[partner] = own;
    return;
  }
  spare[print] = (spare[print] ?? 0) - 1;
  spare[own] = (spare[own] ?? 0) + 1;
}

function toRows({ cells, columns, rows }: Table): readonly (readonly number[])[] {
  return Array.from({ length: rows }, (_, row) => cells.slice(row * columns, (row + 1) * columns));
}
