import type { PlanWords } from './source.ts';

/** Ce que dit le plan en plus de ce que disent tous les éléments, en français. */
export const fr: PlanWords = {
  language: 'fr',
  kinds: { own: 'Ma propre taille', bed: 'Mon propre matelas', grid: 'Tant de blocs' },
  states: { sewn: 'Cousu', washed: 'Lavé' },
  side: (name, state) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Largeur',
    height: 'Longueur',
    'bed.width': 'Largeur du matelas',
    'bed.length': 'Longueur du matelas',
    'bed.drop': 'Retombée sur les côtés',
    'bed.footDrop': 'Retombée au pied',
    columns: 'Blocs en largeur',
    rows: 'Blocs en longueur',
  },
  wish: {
    title: 'Votre souhait',
    label: 'Avec vos mots',
    example: 'un plaid, 100 x 130 cm',
    go: 'Planifier',
    kind: 'Taille',
    region: 'Région',
    blocks: (columns, rows) => `${columns} × ${rows} blocs`,
    at: 'Cette taille est',
    read: (what) => `Lu comme ${what}. Les blocs et le tissu se règlent plus bas.`,
    passed: (words) => `Laissé de côté\u00a0: ${words}.`,
  },
  plan: 'Votre plan',
  drawing: (across, down, size) =>
    `Le quilt à l’échelle\u00a0: ${across} blocs en largeur, ${down} en longueur, ${size}.`,
  figures: { blocks: 'Blocs', each: 'coupe', cloth: 'Tissu', work: 'Travail' },
  fit: {
    width: ['plus large que souhaité', 'plus étroit que souhaité', 'Aussi large que souhaité'],
    height: ['plus long', 'plus court', 'aussi long que souhaité'],
  },
  between: (from, to) => `Selon le tissu, de ${from} à ${to}.`,
  others: 'D’autres plans qui conviennent',
  moreOthers: 'Plus',
  stale: 'Le plan affiché est celui d’avant.',
  ready: (across, down, figures) => `Planifié\u00a0: ${across} sur ${down} blocs, ${figures}.`,
};
