import type { Grid } from '../block/size-quilt.ts';
import type { LayoutTask } from './board.ts';

/**
 * A proven lower bound on the touching pairs of any layout with these counts, pins left aside: the
 * sum over prints of what each cannot help, or what the windows cannot help together.
 *
 * Sides only, print of c blocks on N cells, E sides, t = N − c other blocks:
 * along a closed way through all cells (there is one where N is even and the grid has two rows and
 * columns; else an open way) c cells leave at least 2c − N neighbours alike (2c − N − 1);
 * and the others spoil at most 4 sides each, of the ⌈(n−2)(m−2)/2⌉ that can lie inside the rim
 * without sharing one, and 3 for each more, so at least E − 4t stay alike.
 *
 * Corners too: part the grid into windows of two by two; of the blocks of one print in a window every
 * two touch, so c blocks in W windows give at least c − W pairs, more as windows fill. A parting and
 * the one moved by one cell both ways share no pair: their pairs add up. And whole windows that cannot
 * each show four prints have a pair at least for each print that lacks.
 *
 * @example
 * boundTouching({ grid: { columns: 3, rows: 3 }, counts: [5, 2, 1, 1], touch: 'corners', seed: 1 }) // => 2
 */
export function boundTouching({ grid, counts, touch }: LayoutTask): number {
  const used = counts.filter((count) => count > 0);
  if (touch === 'sides' || grid.columns === 1 || grid.rows === 1) {
    return used.reduce((sum, count) => sum + boundSides(grid, count), 0);
  }
  const part = (across: number, down: number) => boundWindows(grid, used, [across, down]);
  return Math.max(part(0, 0) + part(1, 1), part(0, 1) + part(1, 0));
}

function boundSides({ columns, rows }: Grid, count: number): number {
  const cells = columns * rows;
  const sides = 2 * cells - columns - rows;
  const others = cells - count;
  const inside = Math.ceil((Math.max(0, columns - 2) * Math.max(0, rows - 2)) / 2);
  const spoilt = 4 * Math.min(others, inside) + 3 * Math.max(0, others - inside);
  const isClosed = cells % 2 === 0 && columns > 1 && rows > 1;
  return Math.max(0, 2 * count - cells - (isClosed ? 0 : 1), sides - spoilt);
}

/** Pairs within the windows of one parting, moved by 0 or 1 across and down. */
function boundWindows(
  { columns, rows }: Grid,
  used: readonly number[],
  [across, down]: readonly [number, number],
): number {
  const whole = Math.floor((columns - across) / 2) * Math.floor((rows - down) / 2);
  const wide = Math.ceil((columns + across) / 2);
  const high = Math.ceil((rows + down) / 2);
  const cells = columns * rows;
  // Windows of two cells and of one, at the rim.
  const halves = countHalves({ columns, rows }, [across, down]);
  const single = cells - 4 * whole - 2 * halves;
  const windows = wide * high;
  let apart = 0;
  for (const count of used) apart += boundPairs(count - windows, [whole + halves, whole]);
  // Blocks of one print in as many whole windows as can be; what lacks of four unlike a window is paired.
  let unlike = 0;
  for (const count of used) unlike += Math.min(count, whole);
  const together = used.length === 1 ? 6 * whole + halves : 4 * whole - unlike;
  return single < 0 ? 0 : Math.max(apart, together);
}

/** Pairs of a print with so many blocks more than windows: a second block in one, a third, a fourth. */
function boundPairs(over: number, [seconds, thirds]: readonly [number, number]): number {
  const second = Math.max(0, Math.min(over, seconds));
  const third = Math.max(0, Math.min(over - second, thirds));
  const fourth = Math.max(0, Math.min(over - second - third, thirds));
  return second + 2 * third + 3 * fourth;
}

function countHalves({ columns, rows }: Grid, [across, down]: readonly [number, number]): number {
  const singlesAcross = across + ((columns - across) % 2);
  const singlesDown = down + ((rows - down) % 2);
  return (
    singlesAcross * Math.floor((rows - down) / 2) + singlesDown * Math.floor((columns - across) / 2)
  );
}
