import type { LayoutAnswer, LayoutInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import type { LayoutTask } from './layout/board.ts';
import { countJoins } from './layout/count-joins.ts';
import { countTouching } from './layout/count-touching.ts';
import { LAYOUT_EFFORT } from './layout/effort.ts';
import { layPattern } from './layout/lay-pattern.ts';
import { letterOf } from './layout/letter-of.ts';
import { type Joins, listJoins } from './layout/list-joins.ts';
import { measureMoran } from './layout/measure-moran.ts';
import { measureSpread } from './layout/measure-spread.ts';
import { proveFewest } from './layout/prove-fewest.ts';
import { type Solved, solveLayout } from './layout/solve-layout.ts';
import { roundTo } from './length.ts';
import { writeLinks } from './links.ts';
import type { Resolved } from './wish/reading.ts';

/** Blocks laid in an exact search beside a layout that is only judged. */
const JUDGING = 10_000;

/**
 * Where each print goes, what touches and what must, how evenly the prints are spread.
 *
 * @param resolved what `resolveLayout` understood
 * @returns the body of the answer, links included
 */
export function planLayout(resolved: Resolved<LayoutInput>): LayoutAnswer {
  const { input, assumptions, query } = resolved;
  const { cells, fewest } = settle(input);
  const touching = countTouching(cells);
  const pairs = touching.sides + (input.touch === 'corners' ? touching.corners : 0);
  const joins = listJoins(input, input.touch);
  const value = mixValues(input, cells, joins);
  const letters = [...cells.join('')];
  return {
    engine: ENGINE,
    cells,
    touching,
    fewest,
    optimal: pairs === fewest,
    spread: input.prints.map(({ id }, print) => ({ id, ...roundAll(measureSpread(cells, print)) })),
    joinCount: input.prints.map(({ id }, print) => {
      const own = letterOf(print);
      const shows = letters.map((letter) => letter === own);
      return { id, ...roundAll(countJoins(joins, shows)) };
    }),
    ...(value && { value }),
    seed: input.seed,
    input,
    assumptions,
    cautions: [],
    links: writeLinks(query, { self: '/v1/layout', image: '/v1/layout.svg' }),
  };
}

function settle(input: LayoutInput): Solved {
  const { prints, pattern, fixed, ...rest } = input;
  const counts = prints.map(({ count }) => count);
  const task: LayoutTask = { grid: rest, counts, ...rest, ...(fixed && { fixed }) };
  if (fixed?.every((row) => !row.includes('.'))) {
    return { cells: fixed, fewest: proveFewest({ grid: rest, counts, ...rest }, JUDGING) };
  }
  const values = listValues(input);
  if (pattern === 'scattered') return solveLayout(task, LAYOUT_EFFORT, values);
  return { cells: layPattern(task, pattern, values), fewest: proveFewest(task, JUDGING) };
}

/** The value of each print, where every print that is laid has one. */
function listValues({ prints }: LayoutInput): readonly number[] | undefined {
  const isKnown = prints.every(({ count, value }) => count === 0 || value !== undefined);
  return isKnown ? prints.map(({ value }) => value ?? 0) : undefined;
}

function mixValues(
  input: LayoutInput,
  cells: readonly string[],
  joins: Joins,
): LayoutAnswer['value'] | undefined {
  const values = listValues(input);
  if (values === undefined) return undefined;
  const laid = [...cells.join('')].map((letter) => values[letter.charCodeAt(0) - 65] ?? 0);
  const mix = measureMoran(joins, laid);
  return mix && roundAll(mix);
}

/** Every figure to four decimals. */
function roundAll<Figures extends { readonly [name: string]: number } | object>(
  figures: Figures,
): Figures {
  const rounded = Object.entries(figures).map(([name, value]) => [name, roundTo(value, 4)]);
  return Object.fromEntries(rounded) as Figures;
}
