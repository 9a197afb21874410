import type { ChecklistWords } from './source.ts';

/** Ce que dit la liste du travail, en français. */
export const fr: ChecklistWords = {
  title: 'Le travail',
  done: (done, all) => `${done} sur ${all} faites`,
  left: (time) => `encore ${time} environ`,
  row: (name) => `Rang ${name}`,
  focus: 'Étape par étape',
  handOut: 'Fiche pour un cours',
  missing: 'Cette partie n’a pas pu être chargée. Réessayez une fois connecté.',
};
