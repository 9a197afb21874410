import type { KitsInput, KitsRequest, PlanInput } from '../contract.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { checkKits } from './check-kits.ts';
import { takeUnder } from './read-under.ts';
import {
  keep,
  type Reading,
  type Resolved,
  readPlain,
  startReading,
  writeQuery,
} from './reading.ts';
import { resolveBolts } from './resolve-bolts.ts';
import { resolveCosts, resolveCurrency } from './resolve-costs.ts';
import { resolveFibres } from './resolve-fibres.ts';
import { resolvePlan } from './resolve-plan.ts';

/**
 * Understands a question how many kits some bolts give: the plan in it as `resolvePlan` does, then
 * bolts, what each kit holds, money and fibres. All faults at once, those of the plan below `plan`;
 * rules between plan and bolts are judged where the plan is sound.
 *
 * @returns as `resolvePlan` does
 */
export function resolveKits(request: KitsRequest): Outcome<Resolved<KitsInput>> {
  const reading = startReading(request.unit);
  const plan = resolveOwnPlan(reading, request);
  if (request.kits !== undefined) keep(reading, ['kits'], request.kits);
  const bolts = resolveBolts(reading, request.bolts, plan);
  const perKit = resolvePerKit(reading, request.perKit ?? {}, { bolts, plan });
  const costs = resolveCosts(reading, request);
  const currency = resolveCurrency(reading, request);
  const fibres = resolveFibres(reading, request.fibres ?? {}, plan);
  if (plan !== undefined) {
    const kits = request.kits === undefined ? {} : { kits: request.kits };
    const input = { unit: reading.unit, plan, ...kits, bolts, perKit, costs, currency, fibres };
    checkKits(reading, input);
    if (reading.faults.length === 0) {
      return succeed({ input, assumptions: reading.assumptions, query: writeQuery(reading.kept) });
    }
  }
  return fail(reading.faults);
}

/** The plan is in the unit of the whole request unless it says otherwise. */
function resolveOwnPlan(reading: Reading, request: KitsRequest): PlanInput | undefined {
  const unit = request.plan.unit ?? reading.unit;
  const resolved = resolvePlan({ ...request.plan, unit });
  if (!resolved.ok) {
    takeUnder(reading, ['plan'], { faults: [...resolved.faults], assumptions: [], kept: [] });
    return undefined;
  }
  const { input, assumptions, query } = resolved.value;
  if (unit !== reading.unit) keep(reading, ['plan', 'unit'], unit);
  takeUnder(reading, ['plan'], {
    faults: [],
    assumptions: assumptions.filter(({ path }) => path !== 'unit' && !isOfPrints(path)),
    kept: readPairs(query).filter(([key]) => key !== 'unit'),
  });
  return input;
}

/** How many prints the plan has by itself says nothing here: the bolts tell. */
function isOfPrints(path: string): boolean {
  return /^layers(\.\d+\.prints)?$/.test(path);
}

function readPairs(query: string): [string, string][] {
  return query.split('&').map((pair) => {
    const equals = pair.indexOf('=');
    return [pair.slice(0, equals), decodeURIComponent(pair.slice(equals + 1))];
  });
}

function resolvePerKit(
  reading: Reading,
  given: NonNullable<KitsRequest['perKit']>,
  facts: { readonly bolts: KitsInput['bolts']; readonly plan: PlanInput | undefined },
): KitsInput['perKit'] {
  const top = facts.plan?.layers.find(({ role }) => role === 'top')?.prints ?? [];
  const planned = top.filter((print) => print.count !== 0).length;
  const present = new Set(facts.bolts.flatMap((bolt) => (bolt.role === 'top' ? bolt.print : [])));
  const distinctPrints = readPlain(reading, {
    path: ['perKit', 'distinctPrints'],
    given: given.distinctPrints,
    fallback: Math.max(1, Math.min(planned, present.size)),
    why: 'As many prints in each kit as the plan has, or as there are on bolts',
  });
  const { mostOfOne } = given;
  if (mostOfOne !== undefined) keep(reading, ['perKit', 'mostOfOne'], mostOfOne);
  const spare = readPlain(reading, {
    path: ['perKit', 'spare'],
    given: given.spare,
    fallback: 0,
    why: 'A kit holds the blocks of the plan and no more; the spare ones of a plan are for cutting at home',
  });
  return { distinctPrints, ...(mostOfOne !== undefined && { mostOfOne }), spare };
}
