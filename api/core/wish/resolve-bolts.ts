import type { KitBolt, KitsInput, PlanInput } from '../contract.ts';
import { fromMillimetres, toMillimetres } from '../length.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';

/**
 * Reads bolts. Without a selvage of its own a bolt has that of its layer in the plan.
 *
 * @param plan absent where it was wrong
 */
export function resolveBolts(
  reading: Reading,
  bolts: readonly KitBolt[],
  plan: PlanInput | undefined,
): KitsInput['bolts'] {
  return bolts.map((bolt, index) => resolveBolt(reading, bolt, { index, plan }));
}

function resolveBolt(
  reading: Reading,
  bolt: KitBolt,
  place: { readonly index: number; readonly plan: PlanInput | undefined },
): KitsInput['bolts'][number] {
  const at = (name: string) => ['bolts', place.index, name];
  keep(reading, at('id'), bolt.id);
  keep(reading, at('role'), bolt.role);
  const print = readPlain(reading, { path: at('print'), given: bolt.print, fallback: bolt.id });
  const width = readLengthField(reading, {
    path: at('width'),
    given: bolt.width,
    limit: 'rollWidth',
  });
  const length = readLengthField(reading, {
    path: at('length'),
    given: bolt.length,
    limit: 'lengthLeft',
  });
  const selvage = readLengthField(reading, {
    path: at('selvage'),
    given: bolt.selvage,
    limit: 'selvage',
    fallback: selvageOf(reading, bolt, place.plan),
    why: `Cut away at each edge of ${bolt.id}`,
  });
  const squaring = readLengthField(reading, {
    path: at('squaring'),
    given: bolt.squaring,
    limit: 'squaring',
    fallback: DEFAULTS[reading.unit].squaring,
    why: `Spent on a straight edge of ${bolt.id}`,
  });
  if (bolt.cost !== undefined) keep(reading, at('cost'), bolt.cost);
  return {
    id: bolt.id,
    role: bolt.role,
    print,
    width,
    length,
    selvage,
    squaring,
    ...(bolt.cost !== undefined && { cost: bolt.cost }),
  };
}

function selvageOf(reading: Reading, bolt: KitBolt, plan: PlanInput | undefined): number {
  const layer = plan?.layers.find(({ role }) => role === bolt.role);
  if (plan === undefined || layer === undefined) return DEFAULTS[reading.unit].selvage;
  return fromMillimetres(toMillimetres(layer.selvage, plan.unit), reading.unit, 9);
}
