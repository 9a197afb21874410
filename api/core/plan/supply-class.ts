import { countNeeded } from '../block/count-whole.ts';
import { cutStrips } from '../cloth/cut-strips.ts';
import { roundPurchase } from '../cloth/round-purchase.ts';
import type { ClassAnswer, ClassCloth } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { BLADES, NEEDLE_MINUTES } from '../tables/defaults.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import { buyOffers } from './buy-offers.ts';
import type { Plan } from './reckon-plan.ts';
import { writePurchase } from './write-need.ts';

/**
 * What a class needs whose pupils all make this quilt. Each has the pieces of the plan, spare ones included;
 * each cloth is cut and bought as one for all of them, which is never more than the plan's purchase for each.
 * Thread and bobbins are the plan's for each pupil. A needle serves eight hours of sewing and a rotary blade
 * one quilt (common practice, no source).
 *
 * @param pupils 1 or more
 * @returns figures in the unit of the request
 */
export function supplyClass(plan: Plan, spec: PlanSpec, pupils: number): ClassAnswer {
  const { time, thread } = plan;
  const bulk = spec.unit === 'in' ? 'yd' : 'm';
  const sewing = time.quilt + time.joins + time.rows + time.border;
  const needles = Math.max(1, countNeeded(sewing, NEEDLE_MINUTES));
  return {
    pupils,
    fabrics: supplyCloth(plan, spec, pupils),
    thread: {
      used: roundTo((pupils * thread.used) / MILLIMETRES[bulk], 4),
      bobbins: pupils * thread.bobbins,
      unit: bulk,
    },
    needles: { each: needles, all: pupils * needles },
    blades: { each: BLADES, all: pupils * BLADES },
  };
}

function supplyCloth(plan: Plan, spec: PlanSpec, pupils: number): readonly ClassCloth[] {
  const cloth = plan.cloth.map((need) => ({
    ...need,
    pieces: pupils * (need.pieces + need.spare),
    spare: 0,
  }));
  const purchases = buyOffers(spec, { ...plan, cloth });
  return cloth.flatMap(({ role, fabric, print, pieces }, index): readonly ClassCloth[] => {
    const roll = spec.cloths[index]?.roll;
    if (roll === undefined) return [];
    const side = { across: plan.block.cut, along: plan.block.cut };
    const strips = cutStrips({ roll, ...side, pieces, squaring: spec.squaring });
    const purchase = purchases[index];
    return [
      {
        role,
        fabric,
        ...(print !== undefined && { print }),
        pieces,
        strips: strips.strips,
        length: fromMillimetres(strips.length, spec.unit),
        buy: roundPurchase(strips.length, spec.step, spec.unit),
        ...(purchase && writePurchase(purchase)),
      },
    ];
  });
}
