import type { FabricName, Role } from '#core/contract.ts';

/** `cotton-batting` as `Cotton batting`: the names on the wire are English, a hyphen for a space. */
const say = (name: string) => name.charAt(0).toUpperCase() + name.slice(1).replace('-', ' ');

/** What the small elements for the pages of others say alike, in English. */
export const en = {
  language: 'en',
  /** Until the sentences that say what exactly is wrong have come, and for what has none. */
  wrong: 'That cannot be used. Write it as 8½, 8.5 or 21,5 cm.',
  severities: { danger: 'Danger', care: 'Take care', note: 'Good to know' },
  fabric: say as (name: FabricName) => string,
  role: say as (name: Role) => string,
  unitQuestion: 'Measure in',
  fractions: 'Fractions',
  /** Before what only the page sets and the reader cannot change. */
  locked: 'Set by this page',
  /** Before the list of places in what the page asked for. */
  host: 'Some of what this page asked for could not be used:',
  trouble: {
    silent: 'There is no connection to the planner.',
    busy: 'The planner has too much to do. Wait a minute.',
    broken: 'The planner broke.',
    strange: 'The planner answered in a way that this page does not know.',
  },
  stale: 'The figures are the ones from before.',
  retry: 'Try again',
  device: 'The planner did not answer, so your device worked this out. The figures are the same.',
};
