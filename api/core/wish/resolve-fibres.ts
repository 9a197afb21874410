import type { Fibre, KitsInput, KitsRequest, PlanInput, Role } from '../contract.ts';
import { blendFibres } from '../kits/blend-fibres.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { usualFibres } from '../tables/fibres.ts';
import { keep, type Reading } from './reading.ts';

const ROLES = ['top', 'middle', 'backing'] as const;

/**
 * Reads what the cloth of each role is made of; without word, what its fabric usually is.
 * Faults: `percents-do-not-sum`; `not-one-of` for a role that the plan does not have.
 *
 * @param plan absent where it was wrong
 * @returns fibres of every role of the plan
 */
export function resolveFibres(
  reading: Reading,
  given: NonNullable<KitsRequest['fibres']>,
  plan: PlanInput | undefined,
): KitsInput['fibres'] {
  const fibres: Partial<Record<Role, readonly Fibre[]>> = {};
  const roles = ROLES.filter((role) => plan?.layers.some((layer) => layer.role === role));
  for (const role of ROLES) {
    const own = given[role]?.map((row) => ({ ...row, percent: roundTo(row.percent, 9) }));
    if (own !== undefined) checkFibres(reading, own, role);
    if (plan === undefined) continue;
    if (roles.includes(role)) fibres[role] = readFibres(reading, own, { role, plan });
    else if (own !== undefined) {
      const path = ['fibres', role];
      reading.faults.push({ code: 'not-one-of', path, expected: roles, received: role });
    }
  }
  return fibres;
}

function readFibres(
  reading: Reading,
  own: readonly Fibre[] | undefined,
  { role, plan }: { readonly role: Role; readonly plan: PlanInput },
): readonly Fibre[] {
  const layers = plan.layers.filter((layer) => layer.role === role);
  const usual = blendFibres(
    layers.map(({ gsm, fabric }) => ({ mass: gsm, fibres: usualFibres(fabric) })),
  );
  const fibres = own ?? usual;
  if (write(fibres) === write(usual)) {
    const why = `Usual for ${layers.map(({ fabric }) => fabric).join(' and ')}; go by the bolt`;
    const source = SOURCES.practice;
    reading.assumptions.push({ path: `fibres.${role}`, value: write(usual), why, source });
    return usual;
  }
  for (const [index, { fibre, percent }] of fibres.entries()) {
    keep(reading, ['fibres', role, index, 'fibre'], fibre);
    keep(reading, ['fibres', role, index, 'percent'], percent);
  }
  return fibres;
}

function write(fibres: readonly Fibre[]): string {
  return fibres.map(({ fibre, percent }) => `${percent}% ${fibre}`).join(', ');
}

function checkFibres(reading: Reading, fibres: readonly Fibre[], role: Role): void {
  const received = roundTo(
    fibres.reduce((sum, { percent }) => sum + percent, 0),
    4,
  );
  if (Math.abs(received - 100) < 0.01) return;
  const path = ['fibres', role];
  reading.faults.push({ code: 'percents-do-not-sum', path, expected: '100 in all', received });
}
