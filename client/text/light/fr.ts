import type { FabricName, Role } from '#core/contract.ts';
import { fr as shared } from '../shared/fr.ts';
import type { LightWords } from './source.ts';

/** Ce que disent ensemble les petits éléments pour les pages des autres, en français. */
export const fr: LightWords = {
  language: 'fr',
  wrong: 'Cela ne convient pas. Écrivez-le comme 21,5 ou 8 1/2 in.',
  severities: shared.severities,
  fabric: (name: FabricName) => shared.fabric(name),
  role: (name: Role) => shared.role(name),
  unitQuestion: shared.unitQuestion,
  fractions: shared.fractions,
  locked: 'Fixé par cette page',
  host: 'Une partie de ce que cette page demandait ne convient pas\u00a0:',
  trouble: {
    silent: 'Il n’y a pas de connexion au planificateur.',
    busy: 'Le planificateur a trop à faire. Attendez une minute.',
    broken: 'Le planificateur est en panne.',
    strange: 'Le planificateur a répondu d’une façon que cette page ne connaît pas.',
  },
  stale: 'Les chiffres affichés sont ceux d’avant.',
  retry: shared.retry,
  device: shared.device,
};
