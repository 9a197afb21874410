import type loadHighs from 'highs';

export type Highs = Awaited<ReturnType<typeof loadHighs>>;

/** The least cost of whole numbers of 0 or more that meet every row. Costs are whole. */
export interface WholeModel {
  readonly costs: readonly number[];
  readonly rows: readonly { readonly terms: readonly number[]; readonly least: number }[];
  readonly seconds: number;
}

/** The least cost by HiGHS; nothing where it ran out of time, infinite where there is no solution. */
export function solveModel(highs: Highs, { costs, rows, seconds }: WholeModel): number | undefined {
  const sum = (terms: readonly number[]) =>
    terms
      .flatMap((term, name) =>
        term === 0 ? [] : [`${term < 0 ? '-' : '+'} ${Math.abs(term)} x${name}`],
      )
      .join('\n ');
  const lines = [
    'Minimize',
    ` cost: ${sum(costs)}`,
    'Subject To',
    ...rows.map(({ terms, least }, row) => ` r${row}: ${sum(terms)} >= ${least}`),
    'General',
    ` ${costs.map((_, name) => `x${name}`).join('\n ')}`,
    'End',
  ];
  const options = { time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: 0.5 };
  const { Status, ObjectiveValue } = highs.solve(lines.join('\n'), options);
  if (Status === 'Infeasible') return Number.POSITIVE_INFINITY;
  return Status === 'Optimal' ? Math.round(ObjectiveValue) : undefined;
}
