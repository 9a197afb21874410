import type { OfflineWords } from './source.ts';

/** Ce que nos pages disent d’elles-mêmes et du réseau, en français. */
export const fr: OfflineWords = {
  language: 'fr',
  waiting: '',
  kept: 'Gardée sur cet appareil\u00a0: elle s’ouvre aussi sans réseau.',
  refused:
    'Ce navigateur ne garde pas de pages\u00a0; sans réseau, celle-ci ne s’ouvrira donc pas.',
  silent: 'Pas de réseau. Tout ici continue sans lui.',
  newer: 'Gardée sur cet appareil. Une version plus récente attend votre prochaine visite.',
};
