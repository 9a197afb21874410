import type { LayoutTask } from '#core/layout/board.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import type { Draw } from '#core/layout/start-random.ts';

/** A way to make a layout free of touching, which is then forgotten but for its counts. */
export interface Planting {
  readonly name: string;
  /** Whether no print is to spare: four at corners, or five alike. */
  readonly isTight: boolean;
  /** @param pinned part of the blocks that stay where they were laid, in percent; none where left out */
  readonly plant: (draw: Draw, pinned?: number) => LayoutTask;
}

type Cells = number[][];

const MOST = 30;

/** Row by row, each cell a print that touches none of its like so far, by weight. */
function plantByChance(draw: Draw, touch: 'corners' | 'sides', isSkewed: boolean): Cells {
  const [columns, rows] = [1 + draw(MOST), 1 + draw(MOST)];
  const prints = (touch === 'corners' ? 5 : 3) + draw(8);
  const weights = Array.from({ length: prints }, (_, print) =>
    isSkewed ? 60 / (1 + 2 * print) : 10,
  );
  const cells: Cells = [];
  for (let row = 0; row < rows; row += 1) {
    const line: number[] = [];
    cells.push(line);
    for (let column = 0; column < columns; column += 1) {
      const above = cells[row - 1] ?? [];
      const sides = [line[column - 1], above[column]];
      const near = touch === 'corners' ? [...sides, above[column - 1], above[column + 1]] : sides;
      const free = weights.flatMap((_, print) => (near.includes(print) ? [] : [print]));
      const lots = free.flatMap((print) =>
        Array<number>(Math.ceil(weights[print] ?? 1)).fill(print),
      );
      line.push(lots[draw(lots.length)] ?? 0);
    }
  }
  return cells;
}

/** Four prints in pairs of lines, and then a few blocks of a fifth where it touches nothing. */
function plantPairs(draw: Draw, fifth: number): Cells {
  const [columns, rows] = [2 + draw(MOST - 1), 2 + draw(MOST - 1)];
  const areColumns = draw(2) === 1;
  const starts = Array.from({ length: MOST + 1 }, () => draw(2));
  const cells: Cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const [line, at] = areColumns ? [column, row] : [row, column];
      return 2 * (line % 2) + ((at + (starts[line] ?? 0)) % 2);
    }),
  );
  for (let block = 0; block < fifth; block += 1) {
    const [row, column] = [draw(rows), draw(columns)];
    const about = [-1, 0, 1].flatMap((down) =>
      [-1, 0, 1].map((across) => cells[row + down]?.[column + across]),
    );
    const line = cells[row];
    if (!about.includes(4) && line !== undefined) line[column] = 4;
  }
  return cells;
}

/** Five prints whose counts differ by one at most, as a lattice has them. */
function plantFive(draw: Draw): Cells {
  const [columns, rows] = [2 + draw(MOST - 1), 2 + draw(MOST - 1)];
  const shift = 2 + draw(2);
  const cells: Cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => (column + shift * row) % 5),
  );
  return cells;
}

/** Keeps of a layout its counts, and of its blocks those that are pinned. */
function forget(cells: Cells, touch: 'corners' | 'sides', [draw, pinned]: Forgetting): LayoutTask {
  const all = cells.flat();
  const counts = Array.from(
    { length: Math.max(...all) + 1 },
    (_, print) => all.filter((own) => own === print).length,
  );
  const task = {
    grid: { columns: cells[0]?.length ?? 0, rows: cells.length },
    counts,
    touch,
    seed: draw(1000),
  };
  if (pinned === undefined) return task;
  const keep = (print: number) => (draw(100) < pinned ? letterOf(print) : '.');
  return { ...task, fixed: cells.map((row) => row.map(keep).join('')) };
}

type Forgetting = readonly [draw: Draw, pinned: number | undefined];

type Plant = (draw: Draw) => Cells;

function make(
  name: string,
  plant: Plant,
  { touch, isTight }: { readonly touch: 'corners' | 'sides'; readonly isTight: boolean },
): Planting {
  return { name, isTight, plant: (draw, pinned) => forget(plant(draw), touch, [draw, pinned]) };
}

const [corners, sides, tight] = [
  { touch: 'corners', isTight: false },
  { touch: 'sides', isTight: false },
  { touch: 'corners', isTight: true },
] as const;

export const PLANTINGS: readonly Planting[] = [
  make('by chance, corners', (draw) => plantByChance(draw, 'corners', false), corners),
  make('by chance, sides', (draw) => plantByChance(draw, 'sides', false), sides),
  make('unequal, corners', (draw) => plantByChance(draw, 'corners', true), corners),
  make('unequal, sides', (draw) => plantByChance(draw, 'sides', true), sides),
  make('four prints', (draw) => plantPairs(draw, 0), tight),
  make('four prints and a few of a fifth', (draw) => plantPairs(draw, 1 + draw(25)), tight),
  make('four prints and many of a fifth', (draw) => plantPairs(draw, 400), corners),
  make('five prints alike', plantFive, tight),
];
