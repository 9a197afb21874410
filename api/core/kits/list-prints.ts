import type { PlanInput, PrintInput } from '../contract.ts';
import { letterOf } from '../layout/letter-of.ts';

/**
 * The prints that a plan names for its top; nothing where it only says how many there are, so that
 * they are lettered and any bolt will do.
 */
export function listPrints(plan: Pick<PlanInput, 'layers'>): readonly PrintInput[] | undefined {
  const prints = plan.layers.find(({ role }) => role === 'top')?.prints ?? [];
  const isNamed = prints.some(({ id, count }, at) => id !== letterOf(at) || count !== undefined);
  return isNamed ? prints : undefined;
}
