import type { Assumption, KitsAnswer, KitsInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { cutBolts } from './kits/cut-bolts.ts';
import { fillKits } from './kits/fill-kits.ts';
import { type KitsSpec, specifyKits } from './kits/kits-spec.ts';
import { labelKit } from './kits/label-kit.ts';
import { listKitCautions } from './kits/list-kit-cautions.ts';
import { countKits, limitKits } from './kits/most-kits.ts';
import { writeCutting, writeLeft, writeMoney, writePurchases } from './kits/write-kits.ts';
import { mostApart } from './layout/can-lay.ts';
import { fromMillimetres, roundTo } from './length.ts';
import { writeLinks } from './links.ts';
import { GRAMS, massUnit } from './mass.ts';
import { SOURCES } from './sources.ts';
import type { Resolved } from './wish/reading.ts';

/**
 * From bolts to kits on the shelf: the plan, the most kits of it that the bolts give (proven), what
 * goes into each, how the bolts are cut, what is left, what to buy for more, and the money.
 *
 * @param resolved what `resolveKits` understood
 * @returns the body of the answer, links included
 */
export function planKits(resolved: Resolved<KitsInput>): KitsAnswer {
  const { input, assumptions, query } = resolved;
  const kits = specifyKits(input);
  const { plan, stock, prints } = kits;
  const most = countKits(stock);
  const made = Math.min(most, input.kits ?? most);
  const groups = fillKits(stock, made);
  const cuts = cutBolts(kits.bolts, plan.block.cut, listNeeds(kits, groups, made));
  const isShort = input.kits !== undefined && input.kits > most;
  const money = writeMoney(input, cuts, made);
  return {
    engine: ENGINE,
    grid: { ...plan.grid, blocks: plan.blocks },
    cut: fromMillimetres(plan.block.cut, input.unit),
    squares: stock.perKit,
    mostOfOne: kits.mostOfOne,
    most,
    limitedBy: limitKits(stock, most + 1),
    made,
    kits: groups.map(({ count, squares }) => ({
      count,
      prints: prints
        .map((id, at) => ({ id, blocks: squares[at] ?? 0 }))
        .filter(({ blocks }) => blocks > 0),
    })),
    cutting: writeCutting(cuts, input.unit),
    left: writeLeft(cuts, input.unit),
    ...(isShort && { buyMore: writePurchases(kits, input.kits ?? 0, input.unit) }),
    ...(money !== undefined && { money }),
    ...describeKit(kits, input),
    input,
    assumptions: [...assumptions, ...describeMost(kits, input)],
    cautions: listKitCautions(input.plan, plan, kits.spec),
    links: { ...writeLinks(query, { self: '/v1/kits' }), page: `/kits?${query}` },
  };
}

/** Squares that the kits take of each print, and of each other role. */
function listNeeds({ prints, stock }: KitsSpec, groups: ReturnType<typeof fillKits>, made: number) {
  const top = prints.map((print, at) => ({
    role: 'top' as const,
    print,
    squares: groups.reduce((sum, { count, squares }) => sum + count * (squares[at] ?? 0), 0),
  }));
  return [...top, ...stock.others.map(({ role, perKit }) => ({ role, squares: perKit * made }))];
}

/** Cloth of one kit by mass, N·c²·gsm a layer, and what a label can say of it. */
function describeKit(
  { plan, spec, stock }: KitsSpec,
  { unit, fibres }: KitsInput,
): Pick<KitsAnswer, 'weight' | 'label'> {
  const area = (stock.perKit * plan.block.cut ** 2) / 1e6;
  const layers = spec.layers.map(({ role, gsm }) => {
    return { role, mass: area * gsm, fibres: fibres[role] ?? [] };
  });
  const grams = layers.reduce((sum, { mass }) => sum + mass, 0);
  const mass = massUnit(unit);
  return {
    weight: { dry: roundTo(grams / GRAMS[mass], 4), unit: mass },
    label: labelKit(layers),
  };
}

function describeMost({ mostOfOne, plan }: KitsSpec, { perKit }: KitsInput): readonly Assumption[] {
  if (perKit.mostOfOne !== undefined) return [];
  const apart = mostApart(plan.grid, 'corners');
  const why = `Any number of one print may be in a kit; more than ${apart} cannot be laid without touching at a corner`;
  return [{ path: 'perKit.mostOfOne', value: mostOfOne, why, source: SOURCES.king }];
}
