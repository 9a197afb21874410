import type { Roll } from '../cloth/usable-width.ts';
import type { KitsInput, Role } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { type Plan, reckonPlan } from '../plan/reckon-plan.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { prewashRates } from '../wash/prewash-rates.ts';
import { type PlanSpec, specifyPlan } from '../wish/plan-spec.ts';
import { type Bolt, countBolt } from './count-bolt.ts';
import { listPrints } from './list-prints.ts';
import type { KitStock } from './most-kits.ts';

/** Kits ready to reckon with, in millimetres. */
export interface KitsSpec {
  readonly spec: PlanSpec;
  readonly plan: Plan;
  readonly bolts: readonly Bolt[];
  /** Names of the prints, in the order of the stock. */
  readonly prints: readonly string[];
  readonly stock: KitStock;
  readonly mostOfOne: number;
  /** What is bought of a role where no bolt tells the width. */
  readonly rolls: ReadonlyMap<Role, Roll>;
  readonly squaring: number;
  readonly step: number;
}

/**
 * Turns a resolved input into millimetres, once, works out its plan, and counts the squares.
 */
export function specifyKits(input: KitsInput): KitsSpec {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const spec = specifyPlan(input.plan);
  const plan = reckonPlan(spec);
  const bolts = input.bolts.map((bolt): Bolt => {
    const layer = input.plan.layers.find(({ role }) => role === bolt.role);
    return {
      id: bolt.id,
      role: bolt.role,
      print: bolt.print,
      width: mm(bolt.width),
      length: mm(bolt.length),
      selvage: mm(bolt.selvage),
      squaring: mm(bolt.squaring),
      prewash: layer === undefined ? { length: 0, width: 0 } : prewashRates(layer),
    };
  });
  return {
    spec,
    plan,
    bolts,
    ...countStock(input, plan, bolts),
    rolls: new Map(spec.cloths.toReversed().map(({ role, roll }) => [role, roll])),
    squaring: mm(DEFAULTS[input.unit].squaring),
    step: mm(DEFAULTS[input.unit].step),
  };
}

function countStock(
  input: KitsInput,
  plan: Plan,
  bolts: readonly Bolt[],
): Pick<KitsSpec, 'prints' | 'stock' | 'mostOfOne'> {
  const named = listPrints(input.plan) ?? [];
  const top = bolts.filter(({ role }) => role === 'top');
  const prints = [...new Set([...named.map(({ id }) => id), ...top.map(({ print }) => print)])];
  const squaresOf = (own: readonly Bolt[]) =>
    own.reduce((sum, bolt) => sum + countBolt(bolt, plan.block.cut).squares, 0);
  const squares = prints.map((id) => squaresOf(top.filter(({ print }) => print === id)));
  const mostOfOne = input.perKit.mostOfOne ?? plan.blocks + input.perKit.spare;
  const perKit = plan.blocks + input.perKit.spare;
  const count = (role: Role) => input.plan.layers.filter((layer) => layer.role === role).length;
  const others = (['middle', 'backing'] as const).filter((role) => count(role) > 0);
  return {
    prints,
    mostOfOne,
    stock: {
      prints: prints.map((id, at) => ({
        squares: squares[at] ?? 0,
        most: Math.min(mostOfOne, named.find((print) => print.id === id)?.count ?? mostOfOne),
      })),
      others: others.map((role) => ({
        role,
        squares: squaresOf(bolts.filter((bolt) => bolt.role === role)),
        perKit: perKit * count(role),
      })),
      perKit,
      distinct: input.perKit.distinctPrints,
    },
  };
}
