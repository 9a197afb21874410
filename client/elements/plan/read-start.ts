import type { PlanRequest } from '#core/contract.ts';
import { type HostInput, readHostInput } from '../../data/read-host-input.ts';
import { completeDraft } from './plan-state.ts';

/** Where a plan may be asked for before anybody typed. */
export interface Start {
  /** The query of the page's address, where the element keeps it; else empty. */
  readonly address: string;
  readonly request: PlanRequest | undefined;
  /** A flat query. */
  readonly plan: string | null | undefined;
}

/**
 * What the address asks for, else what the host does, ready for the fields. What other sites append to an address is
 * none of ours, so that it is passed over.
 *
 * @example
 * readStart({ address: '?ref=mail', request: undefined, plan: 'target.size=lap' }).draft['target.size'] // => 'lap'
 */
export function readStart({ address, request, plan }: Start): HostInput {
  const found = readHostInput(address);
  const isFound = Object.keys(found.draft).length > 0;
  const { draft, faults } = isFound ? found : readHostInput(request ?? plan ?? '');
  const ours = faults.filter(({ code }) => !isFound || code !== 'unknown-key');
  return { draft: completeDraft(draft), faults: ours };
}
