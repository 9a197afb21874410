import type { Effort } from './find-layout.ts';

/** Work for one layout, in steps, so that it is the same on every machine. */
export const LAYOUT_EFFORT: Effort = {
  begin: 200_000,
  repair: 900_000,
  spread: 140,
  search: 24_000,
  work: 2_400_000,
};
