import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { writeHand } from './hand-grid.ts';
import type { ShownPlan } from './is-plan-answer.ts';

/** As much of a plan as moving its blocks needs. */
export interface LaidPlan {
  readonly grid: ShownPlan['grid'];
  readonly input: {
    readonly layers: readonly {
      readonly role: string;
      readonly prints: readonly { readonly id: string; readonly color?: string | undefined }[];
    }[];
  };
  readonly layout: { readonly cells: readonly string[] };
}

/**
 * The address of the page on which the blocks of a plan are moved, its own arrangement on the table.
 *
 * @returns path, query and fragment; nothing where there is one print only, or a side longer than a layout's.
 *
 * @example
 * const plan = { grid: { columns: 2, rows: 1 }, input: { layers: [{ role: 'top', prints: [{ id: 'Moss' }, { id: 'Rust' }] }] }, layout: { cells: ['BA'] } };
 * writeLayoutAddress(plan) // => '/layout?columns=2&rows=1&prints.0.id=Moss&prints.0.count=1&prints.1.id=Rust&prints.1.count=1#BA'
 */
export function writeLayoutAddress({ grid, input, layout }: LaidPlan): string | undefined {
  const prints = input.layers.find(({ role }) => role === 'top')?.prints ?? [];
  const { columns, rows } = grid;
  if (
    prints.length < SIZE_LIMITS.layoutPrints ||
    Math.max(columns, rows) > NUMBER_LIMITS.layoutSide.most
  )
    return undefined;
  const laid = layout.cells.join('');
  const countOf = (at: number) => laid.split(String.fromCharCode(65 + at)).length - 1;
  const fields = prints.flatMap(({ id, color }, at) => [
    [`prints.${at}.id`, id],
    [`prints.${at}.count`, `${countOf(at)}`],
    ...(color === undefined ? [] : [[`prints.${at}.color`, color]]),
  ]);
  const query = [['columns', `${columns}`], ['rows', `${rows}`], ...fields]
    .map(([path, value = '']) => `${path}=${encodeURIComponent(value)}`)
    .join('&');
  return `/layout?${query}${writeHand(layout.cells)}`;
}
