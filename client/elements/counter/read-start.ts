import { type CounterPlace, readPlace } from '../../data/counter-place.ts';
import { readDraft } from '../../data/draft-store.ts';
import { NAME } from './counter-report.ts';

/** Where the counter may begin from. */
export interface StartSources {
  /** What was set before the element was there, else the page's query and fragment where the element keeps them. */
  readonly address: string;
  /** What is kept on the device may be used. */
  readonly remember: boolean;
  readonly preset: string;
  /** The unit that squares are typed in to begin with. */
  readonly unit: string | null | undefined;
}

/** Under which our pages keep the last plan on this device. */
const LAST_PLAN = 'last-plan';

/** What the address asks for, else what was left on the device, else what the host does; and the last plan there. */
export function readStart({ address, remember, preset, unit }: StartSources): {
  readonly place: CounterPlace;
  readonly lastPlan: string;
} {
  const kept = remember ? readDraft(NAME) : '';
  const places = [address, kept, preset].map(readPlace);
  const asked = places.find(
    ({ question, shop }, at) => question !== '' || (at === 0 && isBegun(shop)),
  );
  const typed = places.find(({ shop }) => Object.keys(shop).length > 0);
  return {
    place: asked ?? typed ?? { question: '', shop: unit === 'cm' ? { unit } : {} },
    lastPlan: remember ? readDraft(LAST_PLAN) : '',
  };
}

/** Something was typed before anything was asked. */
function isBegun(shop: CounterPlace['shop']): boolean {
  return ['address', 'cut', 'count'].some((path) => shop[path] !== undefined);
}

/** Puts a place into the page's address. A browser that is asked too often refuses: the next time makes it good. */
export function keepPlace(address: string): void {
  if (address === location.search + location.hash) return;
  try {
    history.replaceState(null, '', address || location.pathname);
  } catch {
    // Some browsers take a hundred changes in half a minute and no more.
  }
}
