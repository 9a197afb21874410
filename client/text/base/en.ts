import type { FabricName, Role, SizeName } from '#core/contract.ts';

/** `california-king` as `California king`: the names on the wire are English, a hyphen for a space. */
const say = (name: string) => name.charAt(0).toUpperCase() + name.slice(1).replace('-', ' ');

/** What every element says but what is wrong with what was typed, in English. */
export const en = {
  language: 'en',
  fabric: say as (name: FabricName) => string,
  role: say as (name: Role) => string,
  size: say as (name: SizeName) => string,
  severities: { danger: 'Danger', care: 'Take care', note: 'Good to know' },
  fractions: 'Fractions',
  unitQuestion: 'Measure in',
  device: 'The planner did not answer, so your device worked this out. The figures are the same.',
  unreachable: 'The planner cannot be reached.',
  retry: 'Try again',
  host: 'Some of what was asked for could not be read:',
  print: 'Print',
};
