import type { Unit } from '#core/contract.ts';
import { type Called, type SwitchFacts, switchUnit } from '../../fields/switch-unit.ts';
import { switchCosts } from './kit-money.ts';
import { currencyOf, type KitsDraft, unitOf } from './kits-state.ts';

/**
 * Says every length of a draft and every cost of a length in the other unit. The currency stays what it is, also where
 * nobody had named it.
 */
export function switchKits(
  draft: KitsDraft,
  unit: Unit,
  facts: SwitchFacts,
): { readonly draft: KitsDraft; readonly called: Called } {
  if (unitOf(draft) === unit) return { draft, called: facts.called };
  const currency = currencyOf(draft);
  const lengths = switchUnit(draft, unit, facts);
  const costs = switchCosts(lengths.draft, unit, { currency, called: facts.called });
  return { draft: { ...costs.draft, currency }, called: { ...lengths.called, ...costs.called } };
}
