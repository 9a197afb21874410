import type { Pair } from '#core/contract.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';

/** The quilt after a count of washes. */
export interface SizeAfter {
  readonly washes: number;
  readonly washed: Pair;
  readonly low: Pair;
  readonly high: Pair;
}

/** The quilt as sewn and as it comes out of each wash. */
export interface Sizes {
  readonly sewn: Pair;
  readonly grid?: { readonly columns: number; readonly rows: number };
  readonly after: readonly SizeAfter[];
}

/**
 * The sizes of the quilt that was sewn, or of the one to sew for the size wanted: the nearest in whole blocks where
 * there is one. Sewn size × (1 + change/100), AATCC TM135; nothing where no size was given.
 */
export function findSizes(answer: ShownWash): Sizes | undefined {
  const { sewFor } = answer;
  const sewn = answer.input.sewn ?? sewFor?.nearest?.sewn ?? sewFor;
  if (sewn === undefined) return undefined;
  const wash = (change: Pair): Pair => ({
    width: sewn.width * (1 + change.width / 100),
    height: sewn.height * (1 + change.height / 100),
  });
  const after = answer.sandwich.map(({ washes, change, low, high }) => ({
    washes,
    washed: wash(change),
    low: wash(low),
    high: wash(high),
  }));
  const { width, height } = sewn;
  const grid = answer.input.sewn === undefined ? sewFor?.nearest : undefined;
  return {
    sewn: { width, height },
    ...(grid && { grid: { columns: grid.columns, rows: grid.rows } }),
    after,
  };
}

/**
 * The address of the page that plans the quilt that was wanted, by these swatches, in the blocks that come nearest.
 * Swatches and layers stand in it as they stand in the address of the wash.
 */
export function linkPlan({ links, input, sewFor }: ShownWash): string | undefined {
  if (input.wanted === undefined || sewFor?.nearest === undefined) return undefined;
  const shared = [...new URLSearchParams(links.page.slice(links.page.indexOf('?')))].filter(
    ([path]) => /^(unit|swatches|layers|grain)\b/.test(path),
  );
  const query = new URLSearchParams([
    ...shared,
    ['target.width', String(input.wanted.width)],
    ['target.height', String(input.wanted.height)],
    ['block.cut', String(sewFor.nearest.cut)],
    ['washes', String(input.washes[0] ?? 1)],
  ]);
  return `/?${query}`;
}
