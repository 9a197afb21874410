/** Greatest sizes in bytes after gzip: the one table of budgets, and of the elements that there are. */

/** The worker: what it weighs, and no room to grow unseen; the aim is 60,000. */
export const WORKER = 119_000;

/** The script that brings elements. */
export const LOADER = 2_000;

/** By element, what a page loads before it shows: that script, the element, all it needs at once, with English. */
export const ELEMENTS: Readonly<Record<string, number>> = {
  plan: 23_500,
  size: 16_000,
  layout: 29_500,
  yardage: 16_000,
  counter: 41_500,
  compare: 24_000,
  wash: 43_000,
  stash: 33_000,
  kits: 33_500,
};

/** What is fetched only when it is needed, by its source; the first row that a path begins with counts. */
export const LAZY: Readonly<Record<string, number>> = {
  'client/data/on-device.ts': 54_000,
  'client/data/read-words.ts': 11_000,
  'client/data/yardage-on-device.ts': 23_000,
  'client/data/layout-on-device.ts': 17_000,
  'client/data/wash-on-device.ts': 17_000,
  'client/data/stash-on-device.ts': 26_500,
  'client/data/kits-on-device.ts': 37_500,
  'client/elements/plan/hand-out.ts': 11_500,
  'client/data/csv-tool.ts': 8_000,
  'client/text/': 6_000,
  'client/': 10_000,
};

/** A page of ours with its style sheet and all that its elements load before they show. */
export const PAGE = 46_000;
