import type { Role } from '#core/contract.ts';
import { MILLIMETRES } from '#core/length.ts';
import { GRAMS } from '#core/mass.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';

/** What is compared, in the order in which it is told. */
export const FIGURES = [
  'width',
  'height',
  'blocks',
  'cut',
  'top',
  'middle',
  'backing',
  'cloth',
  'cost',
  'thread',
  'snips',
  'minutes',
  'weight',
] as const;

export type FigureName = (typeof FIGURES)[number];

/** What a figure counts: millimetres of quilt, millimetres of cloth or thread, grams, minutes, minor units of money, pieces. */
export type Measure = 'length' | 'cloth' | 'mass' | 'time' | 'money' | 'count';

export const MEASURES: Readonly<Record<FigureName, Measure>> = {
  width: 'length',
  height: 'length',
  blocks: 'count',
  cut: 'length',
  top: 'cloth',
  middle: 'cloth',
  backing: 'cloth',
  cloth: 'cloth',
  cost: 'money',
  thread: 'cloth',
  snips: 'count',
  minutes: 'time',
  weight: 'mass',
};

/** The figures of a plan in one measure, whatever units it is told in; what a plan has not is left out. */
export type Figures = Readonly<Partial<Record<FigureName, number>>>;

/** The figures by which plans are compared: millimetres, grams, minutes, minor units, pieces. */
export function listFigures(plan: ShownPlan): Figures {
  const inMm = (value: number) => value * MILLIMETRES[plan.input.unit];
  const buys = plan.fabrics.filter(({ pieces }) => pieces > 0);
  const clothOf = (role?: Role) => {
    const found = buys.filter((row) => role === undefined || row.role === role);
    const sum = found.reduce((all, { buy }) => all + buy.amount * MILLIMETRES[buy.unit], 0);
    return found.length > 0 ? sum : undefined;
  };
  const figures: Readonly<Record<FigureName, number | undefined>> = {
    width: inMm(plan.size.washed.width),
    height: inMm(plan.size.washed.height),
    blocks: plan.grid.columns * plan.grid.rows,
    cut: inMm(plan.block.cut),
    top: clothOf('top'),
    middle: clothOf('middle'),
    backing: clothOf('backing'),
    cloth: clothOf(),
    cost: sumCost(buys),
    thread: plan.thread.used * MILLIMETRES[plan.thread.unit],
    snips: plan.fringe.snips,
    minutes: plan.time.total,
    weight: plan.weight.dry * GRAMS[plan.weight.unit],
  };
  const known = Object.entries(figures).filter(([, value]) => value !== undefined);
  return Object.fromEntries(known);
}

/** Told only where every cloth has a price. */
function sumCost(buys: readonly Pick<ShownPlan['fabrics'][number], 'cost'>[]): number | undefined {
  const isKnown = buys.every(({ cost }) => cost?.of === 'price');
  return isKnown ? buys.reduce((sum, { cost }) => sum + (cost?.total ?? 0), 0) : undefined;
}
