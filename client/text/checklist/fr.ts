import type { ChecklistWords } from './source.ts';

/** Ce que dit la liste du travail en plus de ses étapes, en français. */
export const fr: ChecklistWords = {
  title: 'Le travail',
  done: (done, all) => `${done} sur ${all} faits`,
  left: (time) => `encore ${time} environ`,
  row: (name) => `Rang ${name}`,
  focus: 'Étape par étape',
  handOut: 'Feuille pour un cours',
  missing: 'Cette partie n’a pas pu être chargée. Réessayez une fois en ligne.',
};
