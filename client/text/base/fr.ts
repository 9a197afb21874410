import type { FabricName, Role, SizeName } from '#core/contract.ts';
import type { BaseWords } from './source.ts';

const fabrics: Readonly<Record<FabricName, string>> = {
  'quilting-cotton': 'Coton à patchwork',
  flannel: 'Flanelle',
  denim: 'Toile de jean',
  'linen-cotton': 'Lin et coton',
  plush: 'Peluche',
  fleece: 'Polaire',
  'cotton-batting': 'Molleton coton',
  'blend-batting': 'Molleton mixte',
  'bamboo-batting': 'Molleton bambou',
  'polyester-batting': 'Molleton polyester',
};

const roles: Readonly<Record<Role, string>> = {
  top: 'Dessus',
  middle: 'Milieu',
  backing: 'Dos',
};

const sizes: Readonly<Record<SizeName, string>> = {
  cot: 'Lit de bébé',
  lap: 'Couvre-genoux',
  throw: 'Plaid',
  twin: 'Twin (É.-U.)',
  single: 'Lit une place',
  full: 'Full (É.-U.)',
  double: 'Lit deux places',
  queen: 'Queen',
  king: 'King',
  'california-king': 'California King',
  'super-king': 'Super King',
};

/** Ce que dit chaque élément, en français. */
export const fr: BaseWords = {
  language: 'fr',
  fabric: (name) => fabrics[name],
  role: (name) => roles[name],
  size: (name) => sizes[name],
  severities: { danger: 'Danger', care: 'Attention', note: 'Bon à savoir' },
  fractions: 'Fractions',
  unitQuestion: 'Mesurer en',
  device:
    'Le planificateur n’a pas répondu, votre appareil a donc calculé lui-même. Les chiffres sont les mêmes.',
  unreachable: 'Le planificateur est injoignable.',
  retry: 'Réessayer',
  host: 'Une partie de la demande n’a pas pu être lue\u00a0:',
  print: 'Imprimer',
};
