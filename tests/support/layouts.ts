import fc from 'fast-check';
import { letterOf } from '#core/layout/letter-of.ts';
import { deepFreeze } from './deep-freeze.ts';

/** How many blocks of each print lie in a layout, A first. */
export function tallyPrints(cells: readonly string[], prints: number): readonly number[] {
  const all = cells.join('');
  return Array.from({ length: prints }, (_, print) => all.split(letterOf(print)).length - 1);
}

/** A grid with counts for its prints that sum to its cells; some prints may have none. */
export function anyLayout(most = 12, prints = 8) {
  const side = fc.integer({ min: 1, max: most });
  return fc
    .tuple(side, side, fc.integer({ min: 1, max: prints }))
    .chain(([columns, rows, prints]) =>
      fc
        .array(fc.integer({ min: 0, max: prints - 1 }), {
          minLength: columns * rows,
          maxLength: columns * rows,
        })
        .map((picks) =>
          deepFreeze({
            grid: { columns, rows },
            counts: Array.from(
              { length: prints },
              (_, print) => picks.filter((pick) => pick === print).length,
            ),
          }),
        ),
    );
}

/** Counts as equal as they can be. */
export function equalCounts(cells: number, prints: number): readonly number[] {
  return Array.from(
    { length: prints },
    (_, print) => Math.floor(cells / prints) + (print < cells % prints ? 1 : 0),
  );
}
