import type { Grid } from '../block/size-quilt.ts';
import { apportionBlocks } from '../cloth/apportion-blocks.ts';
import type { Touch } from '../contract.ts';
import { arrangePrints } from './arrange-prints.ts';
import { canLay, mostApart } from './can-lay.ts';
import { countTouching } from './count-touching.ts';
import { layChecks } from './lay-checks.ts';
import { layFamilies } from './lay-families.ts';
import { letterOf } from './letter-of.ts';
import { settleTouching } from './settle-touching.ts';

/** From more blocks on the quick ways are tried before the handsome one. */
const MANY = 100;

/**
 * Fills a grid from the blocks there are of each print, in proportion to them as far as that goes.
 * Where `touch` is given, so that no print touches itself: as a plan is laid out, in families of rows
 * or of columns, in checks, or by settling what touches. What comes back is the proof.
 *
 * @param supply blocks there are of each print, at most 26 prints
 * @returns a string a row from the top, a letter a block, A the first print; nothing where there are
 * too few blocks, where none can be laid apart, or where none was found
 *
 * @example
 * countTouching(layApart({ columns: 4, rows: 2 }, [9, 9, 9, 9], 'corners') ?? ['AA']) // => { sides: 0, corners: 0 }
 * layApart({ columns: 2, rows: 2 }, [9, 9, 9], 'corners') // => undefined
 */
export function layApart(
  grid: Grid,
  supply: readonly number[],
  touch?: Touch,
): readonly string[] | undefined {
  const blocks = grid.columns * grid.rows;
  if (touch !== undefined && !canLay(grid, supply, touch)) return undefined;
  const most = touch === undefined ? blocks : mostApart(grid, touch);
  const capped = supply.map((count) => Math.min(count, most));
  if (capped.reduce((sum, count) => sum + count, 0) < blocks) return undefined;
  const asPlanned = () => arrangePrints(grid, apportionBlocks(blocks, capped));
  if (touch === undefined)
    return (blocks > MANY ? layLines(grid, capped) : undefined) ?? asPlanned();
  const early = blocks > MANY ? layQuick(grid, capped, touch) : undefined;
  if (early !== undefined) return early;
  const planned = asPlanned();
  if (isApart(planned, touch)) return planned;
  return (
    (blocks > MANY ? undefined : layQuick(grid, capped, touch)) ??
    writeRows(settleTouching(planned.map(readRow), supply, touch))
  );
}

function layQuick(
  grid: Grid,
  supply: readonly number[],
  touch: Touch,
): readonly string[] | undefined {
  const checks = touch === 'sides' ? writeRows(layChecks(grid, supply)) : undefined;
  return checks !== undefined && isApart(checks, touch) ? checks : layLines(grid, supply);
}

/** In families of rows, else of columns. */
function layLines(grid: Grid, supply: readonly number[]): readonly string[] | undefined {
  const { columns, rows } = grid;
  return writeRows(
    layFamilies(grid, supply) ?? turn(layFamilies({ columns: rows, rows: columns }, supply)),
  );
}

function writeRows(
  rows: readonly (readonly number[])[] | undefined,
): readonly string[] | undefined {
  return rows?.map((row) => row.map(letterOf).join(''));
}

function isApart(cells: readonly string[], touch: Touch): boolean {
  const { sides, corners } = countTouching(cells);
  return sides === 0 && (touch === 'sides' || corners === 0);
}

function readRow(row: string): readonly number[] {
  return [...row].map((letter) => letter.charCodeAt(0) - 65);
}

function turn(
  rows: readonly (readonly number[])[] | undefined,
): readonly (readonly number[])[] | undefined {
  return rows?.[0]?.map((_, column) => rows.map((row) => row[column] ?? 0));
}
