import type { CompareWords } from './source.ts';

/** What the comparison says, in French. */
export const fr: CompareWords = {
  title: 'Deux plans',
  plans: { a: 'Un plan', b: 'L’autre plan' },
  hint: 'Collez l’adresse d’un plan.',
  none: 'Collez ci-dessus les adresses de deux plans. Un plan déjà là peut être doublé.',
  noPlan:
    'Ce n’est pas l’adresse d’un plan. Ouvrez le plan, copiez l’adresse de sa page et collez-la ici.',
  double: 'Le doubler',
  doublings: { long: 'Deux fois plus long', both: 'Le double de chaque côté' },
  swap: 'Échanger',
  open: 'Ouvrir ce plan',
  table: 'Les chiffres des deux plans',
  figure: 'Chiffre',
  difference: 'L’autre par rapport au premier',
  figures: {
    width: 'Largeur, lavé',
    height: 'Longueur, lavé',
    blocks: 'Blocs',
    cut: 'Coupe d’un bloc',
    top: 'Tissu du dessus',
    middle: 'Tissu du milieu',
    backing: 'Tissu du dos',
    cloth: 'Tissu en tout',
    cost: 'Prix du tissu',
    thread: 'Fil, au plus environ',
    snips: 'Crans',
    minutes: 'Travail',
    weight: 'Poids, sec',
  },
  more: (by) => `${by} de plus`,
  less: (by) => `${by} de moins`,
  same: 'pareil',
  drawing: (name, size) => `${name} à l’échelle, ${size} après lavage.`,
  scale: 'Les deux sont dessinés à la même échelle.',
  ready: (one, other) => `Comparés\u00a0: ${one} et ${other}.`,
};
