import type { YardageWords } from './source.ts';

/** Ce que dit le métrage en plus de ce que disent tous les petits éléments, en français. */
export const fr: YardageWords = {
  title: 'Combien de tissu\u00a0?',
  width: 'Laize du rouleau',
  selvage: 'Lisière, de chaque côté',
  left: 'Reste sur le rouleau',
  unknown: 'inconnu',
  pieces: 'Pièces à couper',
  across: (name) => `${name}, en largeur`,
  along: (name) => `${name}, en longueur`,
  count: (name) => `${name}, combien`,
  size: (name, size, pieces) => `${name}\u00a0: ${pieces} de ${size}`,
  add: 'Une autre mesure',
  remove: (name) => `Laisser ${name} de côté`,
  buy: 'Acheter',
  cutInto: (length) => `On en coupe ${length}`,
  enough: 'Le reste du rouleau suffit.',
  short: 'Le reste du rouleau ne suffit pas. Il donne\u00a0:',
  strips: 'Coupé en bandes en travers',
  strip: (strips, height) => `${strips} × ${height} de haut`,
  turned: 'tourné',
  rest: (width) => `il reste ${width}`,
  cost: 'Coût du tissu',
  drawn: 'Les coupes à l’échelle',
  drawing: (strip) => `Une bande\u00a0: ${strip}.`,
  ready: (amount) => `Achetez ${amount}.`,
};
