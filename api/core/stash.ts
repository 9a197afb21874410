import { infantSleep, isCotSize, rotaryCutter, unmeasuredShrink } from './cautions.ts';
import type { Caution, Pair, StashAnswer, StashInput, StashOption, Unit } from './contract.ts';
import { ENGINE } from './engine.ts';
import { countTouching } from './layout/count-touching.ts';
import { letterOf } from './layout/letter-of.ts';
import { fromMillimetres } from './length.ts';
import { writeLinks } from './links.ts';
import { choosePlans, type StashPlan } from './stash/choose-plans.ts';
import { type StashSpec, specifyStash } from './stash/stash-spec.ts';
import { supplyBlocks } from './stash/supply-blocks.ts';
import { usePieces, type Wanted } from './stash/use-pieces.ts';
import { findFabric } from './tables/fabrics.ts';
import { isMeasured } from './wash/shrink-quilt.ts';
import type { Resolved } from './wish/reading.ts';

/**
 * What can be made of the pieces on hand: for each cut size the most blocks, the grids they make, and
 * of those the plans worth showing, each proven by an arrangement of its prints.
 *
 * @param resolved what `resolveStash` understood
 * @returns the body of the answer, links included; no options where the pieces are too small or their
 * prints cannot be laid as asked
 */
export function planStash(resolved: Resolved<StashInput>): StashAnswer {
  const { input, assumptions, query } = resolved;
  const spec = specifyStash(input);
  const supplies = spec.cuts.map((cut) => supplyBlocks(spec, cut));
  const { plans, limitedBy } = choosePlans(spec, supplies);
  return {
    engine: ENGINE,
    supply: supplies.map(({ cut, roles }) => ({ cut: fromMillimetres(cut, input.unit), roles })),
    limitedBy,
    options: plans.map((plan) => writeOption(spec, plan, input.unit)),
    input,
    assumptions,
    cautions: describeCautions(input, plans),
    links: { ...writeLinks(query, { self: '/v1/stash' }), page: `/stash?${query}` },
  };
}

function writeOption(spec: StashSpec, plan: StashPlan, unit: Unit): StashOption {
  const inUnit = (value: number) => fromMillimetres(value, unit);
  const pair = (size: Pair): Pair => ({ width: inUnit(size.width), height: inUnit(size.height) });
  const { grid, cells, limitedBy } = plan;
  const wanted = listWanted(spec, plan);
  const isOnHand = ({ role }: Wanted) => spec.pieces.some((piece) => piece.role === role);
  const uses = usePieces(spec, grid.cut, wanted.filter(isOnHand));
  return {
    cut: inUnit(grid.cut),
    columns: grid.columns,
    rows: grid.rows,
    blocks: grid.blocks,
    sewn: pair(grid.sewn),
    washed: pair(grid.washed),
    ...('wish' in spec.aim && { fit: pair(missBy(grid, spec.aim.wish)) }),
    uses: uses
      .filter(({ squares }) => squares > 0)
      .map(({ id, role, squares }) => ({ id, role, blocks: squares })),
    left: uses.map(({ id, left }) => ({
      id,
      rectangles: left.map(({ width, length, count }) => ({
        width: inUnit(width),
        length: inUnit(length),
        count,
      })),
    })),
    buy: wanted
      .filter((want) => !isOnHand(want))
      .map(({ role, squares }) => ({ role, blocks: squares })),
    limitedBy,
    layout: {
      prints: plan.supply.prints.map(({ id }) => id),
      cells,
      touching: countTouching(cells),
    },
  };
}

/** Squares of each print as laid, and of each other layer one a block. */
function listWanted(spec: StashSpec, { supply, cells, grid }: StashPlan): readonly Wanted[] {
  const letters = [...cells.join('')];
  const top = supply.prints.map(({ id }, at) => ({
    role: 'top' as const,
    print: id,
    squares: letters.filter((letter) => letter === letterOf(at)).length,
  }));
  const others = spec.layers.filter(({ role }) => role !== 'top');
  return [...top, ...others.map(({ role, count }) => ({ role, squares: count * grid.blocks }))];
}

function missBy(
  { sewn, washed }: StashPlan['grid'],
  wish: Pair & { readonly at: 'washed' | 'sewn' },
): Pair {
  const size = wish.at === 'sewn' ? sewn : washed;
  return { width: size.width - wish.width, height: size.height - wish.height };
}

function describeCautions(input: StashInput, plans: readonly StashPlan[]): readonly Caution[] {
  const sizes = plans.map(({ grid }) => grid.washed);
  const size = sizes.find(isCotSize) ?? sizes[0];
  const isKnown = input.layers.every((layer) => isMeasured(layer, findFabric(layer.fabric)));
  return [
    ...(size === undefined ? [] : [infantSleep({ size, wish: size })]),
    rotaryCutter(),
    ...(isKnown ? [] : [unmeasuredShrink()]),
  ];
}
