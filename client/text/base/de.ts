import type { FabricName, Role, SizeName } from '#core/contract.ts';
import type { BaseWords } from './source.ts';

const fabrics: Readonly<Record<FabricName, string>> = {
  'quilting-cotton': 'Patchwork\u00adstoff',
  flannel: 'Flanell',
  denim: 'Jeansstoff',
  'linen-cotton': 'Leinen-Baumwolle',
  plush: 'Plüsch',
  fleece: 'Fleece',
  'cotton-batting': 'Baumwollvlies',
  'blend-batting': 'Mischvlies',
  'bamboo-batting': 'Bambusvlies',
  'polyester-batting': 'Polyestervlies',
};

const roles: Readonly<Record<Role, string>> = {
  top: 'Oberseite',
  middle: 'Zwischenlage',
  backing: 'Rückseite',
};

const sizes: Readonly<Record<SizeName, string>> = {
  cot: 'Babybett',
  lap: 'Kniedecke',
  throw: 'Kuscheldecke',
  twin: 'Twin (USA)',
  single: 'Einzelbett',
  full: 'Full (USA)',
  double: 'Doppelbett',
  queen: 'Queen',
  king: 'King',
  'california-king': 'California King',
  'super-king': 'Super King',
};

/** Was jedes Element sagt, auf Deutsch. */
export const de: BaseWords = {
  language: 'de',
  fabric: (name) => fabrics[name],
  role: (name) => roles[name],
  size: (name) => sizes[name],
  severities: { danger: 'Gefahr', care: 'Vorsicht', note: 'Gut zu wissen' },
  fractions: 'Bruchteile',
  unitQuestion: 'Messen in',
  device:
    'Der Planer hat nicht geantwortet, darum hat dein Gerät gerechnet. Die Zahlen sind dieselben.',
  unreachable: 'Der Planer ist nicht zu erreichen.',
  retry: 'Noch einmal',
  host: 'Manches von dem, was verlangt war, ließ sich nicht lesen:',
  print: 'Drucken',
};
