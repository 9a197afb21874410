import { WASH_KEYS } from '../../data/names.ts';
import { readHostInput } from '../../data/read-host-input.ts';
import { exampleSwatches } from './example-swatches.ts';
import { splitDraft, type WashState } from './wash-state.ts';

/** Where something to begin with may stand, each a flat query. */
export interface Start {
  readonly address: string;
  /** What was kept on the device. */
  readonly kept: string;
  readonly wash: string;
}

/**
 * What the address asks for, else what was kept, else what the host gives; where none of them has a swatch nor a
 * size, the invented shop's swatches. What other sites append to an address is passed over.
 */
export function readStart(start: Start): Pick<WashState, 'cloths' | 'draft' | 'hostFaults'> {
  const read = (query: string) => readHostInput(query, WASH_KEYS);
  const found = [start.address, start.kept]
    .map((query) => read(query).draft)
    .find((draft) => Object.keys(draft).length > 0);
  const host = read(start.wash);
  const draft = found ?? host.draft;
  const { cloths, draft: quilt } = splitDraft(draft);
  const isBlank = Object.keys(draft).every((path) => path === 'unit');
  return {
    cloths: isBlank ? exampleSwatches(quilt.unit === 'cm' ? 'cm' : 'in') : cloths,
    draft: quilt,
    hostFaults: found === undefined ? host.faults : [],
  };
}
