import { type ClothLimit, nearestPlan } from '#core/counter/nearest-plan.ts';
import { fromMillimetres, MILLIMETRES } from '#core/length.ts';
import type { Counter } from './counter-question.ts';
import type { CounterRow } from './counter-rows.ts';
import { type AnyDraft, writeQuery } from './draft.ts';
import { shareCounts } from './share-counts.ts';

/** A quilt that what there is makes. */
export interface NearestQuilt {
  readonly columns: number;
  readonly rows: number;
  /** In the unit of the plan, as the rest. */
  readonly cut: number;
  readonly washed: { readonly width: number; readonly height: number };
  /** The query of its plan. */
  readonly question: string;
}

/**
 * The quilt nearest to the plan that can be cut from what is left on the bolt in hand, and from the lengths of the
 * cloths that were bought already.
 *
 * @param at the cloth in hand
 * @returns nothing where not one block comes out, or where there is no plan
 */
export function findNearest(
  { plan, question, unit }: Counter,
  rows: readonly CounterRow[],
  at: number,
): NearestQuilt | undefined {
  if (plan === undefined) return undefined;
  const { wish, chosen } = plan.choice;
  const limits = rows.flatMap((row, place) => limit(row, place, at));
  const found = nearestPlan(plan.spec, { wish, ...chosen }, limits);
  if (found === undefined) return undefined;
  const say = (millimetres: number) => fromMillimetres(millimetres, unit);
  const { columns, rows: down } = found.grid;
  const cut = fromMillimetres(found.cut, unit, 9);
  const washed = { width: say(found.washed.width), height: say(found.washed.height) };
  const asked = Object.fromEntries(new URLSearchParams(question));
  return {
    columns,
    rows: down,
    cut,
    washed,
    question: replace(asked, { columns, rows: down, cut }),
  };
}

function limit({ bolt, left, isGot, ask }: CounterRow, at: number, inHand: number): ClothLimit[] {
  const { width } = bolt;
  if (at === inHand) return left === undefined ? [] : [{ at, width, length: left.length }];
  if (!isGot || ask.buy === undefined) return [];
  return [{ at, width, length: ask.buy.amount * MILLIMETRES[ask.buy.unit] }];
}

/** The same plan with another grid of other squares. */
function replace(
  asked: AnyDraft,
  grid: { readonly columns: number; readonly rows: number; readonly cut: number },
): string {
  const kept = Object.entries(shareCounts(asked)).filter(
    ([path]) => !/^(target|cuts)(\.|$)/.test(path) && path !== 'block.cut',
  );
  return writeQuery({
    'target.columns': `${grid.columns}`,
    'target.rows': `${grid.rows}`,
    'block.cut': `${grid.cut}`,
    ...Object.fromEntries(kept),
  });
}
