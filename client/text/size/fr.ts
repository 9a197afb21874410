import { fr as shared } from '../shared/fr.ts';
import type { SizeWords } from './source.ts';

/** Ce que dit la taille en plus de ce que disent tous les petits éléments, en français. */
export const fr: SizeWords = {
  title: 'De quelle taille\u00a0?',
  kind: 'Taille',
  kinds: { own: 'Ma propre taille', bed: 'Mon propre matelas', grid: 'Tant de blocs' },
  size: (name) => shared.size(name),
  entries: {
    width: 'Largeur, lavé',
    height: 'Longueur, lavé',
    'bed.width': 'Largeur du matelas',
    'bed.length': 'Longueur du matelas',
    columns: 'Blocs en largeur',
    rows: 'Blocs en longueur',
  },
  blocks: 'Blocs',
  cut: (length) => `coupe ${length}`,
  washed: 'Lavé',
  sewn: (size) => `cousu ${size}`,
  fit: (difference) => `Par rapport à votre souhait\u00a0: ${difference}.`,
  wider: (by) => `${by} plus large`,
  narrower: (by) => `${by} plus étroit`,
  longer: (by) => `${by} plus long`,
  shorter: (by) => `${by} plus court`,
  same: 'pareil',
  cloth: 'Tissu à acheter',
  lacking: (squares) => `Il n’y en a pas assez en vente. Carrés qui manquent\u00a0: ${squares}`,
  cost: 'Coût du tissu',
  work: 'Travail',
  whole: 'Le plan entier',
  drawing: (across, down) =>
    `Les blocs à l’échelle\u00a0: ${across} en largeur, ${down} en longueur.`,
  ready: (across, down, size) => `${across} sur ${down} blocs, lavé ${size}.`,
};
