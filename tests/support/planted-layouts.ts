import type { LayoutTask } from '#core/layout/board.ts';
import type { Draw } from '#core/layout/start-random.ts';

/** A way to make a layout free of touching, which is then forgotten but for its counts. */
export interface Planting {
  readonly name: string;
  /** Whether no print is to spare: four at corners, or five alike. */
  readonly isTight: boolean;
  readonly plant: (draw: Draw) => LayoutTask;
}

type Cells = number[][];

const MOST = 30;

/** Row by row, each cell a print that touches none of its like so far, by weight. */
function plantByChance(draw: Draw, touch: 'corners' | 'sides', isSkewed: boolean): LayoutTask {
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
  return forget(cells, touch, draw);
}

/** Four prints in pairs of lines, and then a few blocks of a fifth where it touches nothing. */
function plantPairs(draw: Draw, fifth: number): LayoutTask {
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
  return forget(cells, 'corners', draw);
}

/** Five prints whose counts differ by one at most, as a lattice has them. */
function plantFive(draw: Draw): LayoutTask {
  const [columns, rows] = [2 + draw(MOST - 1), 2 + draw(MOST - 1)];
  const shift = 2 + draw(2);
  const cells: Cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => (column + shift * row) % 5),
  );
  return forget(cells, 'corners', draw);
}

function forget(cells: Cells, touch: 'corners' | 'sides', draw: Draw): LayoutTask {
  const all = cells.flat();
  const counts = Array.from(
    { length: Math.max(...all) + 1 },
    (_, print) => all.filter((own) => own === print).length,
  );
  return {
    grid: { columns: cells[0]?.length ?? 0, rows: cells.length },
    counts,
    touch,
    seed: draw(1000),
  };
}

export const PLANTINGS: readonly Planting[] = [
  {
    name: 'by chance, corners',
    isTight: false,
    plant: (draw) => plantByChance(draw, 'corners', false),
  },
  {
    name: 'by chance, sides',
    isTight: false,
    plant: (draw) => plantByChance(draw, 'sides', false),
  },
  {
    name: 'unequal, corners',
    isTight: false,
    plant: (draw) => plantByChance(draw, 'corners', true),
  },
  { name: 'unequal, sides', isTight: false, plant: (draw) => plantByChance(draw, 'sides', true) },
  { name: 'four prints', isTight: true, plant: (draw) => plantPairs(draw, 0) },
  {
    name: 'four prints and a few of a fifth',
    isTight: true,
    plant: (draw) => plantPairs(draw, 1 + draw(25)),
  },
  {
    name: 'four prints and many of a fifth',
    isTight: false,
    plant: (draw) => plantPairs(draw, 400),
  },
  { name: 'five prints alike', isTight: true, plant: plantFive },
];
