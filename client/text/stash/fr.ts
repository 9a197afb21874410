import type { Role, StashLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { StashWords } from './source.ts';

const count = makeCount('fr');

const limits: Readonly<Record<Exclude<StashLimit, Role>, string>> = {
  touch: 'Avec plus de blocs, un imprimé se toucherait lui-même.',
  target: 'Il est aussi grand que souhaité.',
  shape: 'Il y a du tissu pour plus de blocs, mais pas pour un rang entier dans cette forme.',
  greatest: 'Un quilt plus grand ne peut pas être planifié.',
};

const missing: Readonly<Record<Role, string>> = {
  top: 'tissu imprimé',
  middle: 'tissu du milieu',
  backing: 'tissu de dos',
};

/** Ce que dit la page de la réserve en plus de ce que disent tous les éléments, en français. */
export const fr: StashWords = {
  language: 'fr',
  table: 'Ce que vous avez',
  wish: 'Ce que cela peut donner',
  cut: 'Carrés de',
  anyCut: 'au choix',
  cutHint: 'Laissé vide, on essaie de 6 à 12 in ou de 15 à 30 cm.',
  shape: 'Forme',
  shapes: {
    throw: 'Plaid\u00a0: quatre de large, cinq de haut',
    square: 'Carré',
    tall: 'Haut\u00a0: deux de large, trois de haut',
    wide: 'Large\u00a0: cinq de large, quatre de haut',
    own: 'Comme dans l’adresse',
  },
  touch: 'Les mêmes imprimés peuvent',
  touches: {
    '': 'se toucher',
    sides: 'ne pas partager de côté',
    corners: 'ne pas se toucher du tout',
  },
  seam: 'Marge de couture',
  more: 'Couture et bords',
  squaring: 'À couper de chaque pièce pour la mettre d’équerre',
  result: 'Ce que cela donne',
  none: 'Pas encore de quilt',
  empty: 'Écrivez une pièce de tissu imprimé, et ce qu’elle donne apparaît ici.',
  small:
    'Ces pièces ne donnent aucun quilt qui puisse se poser ainsi. Essayez des carrés plus petits, laissez les mêmes imprimés se toucher ou ajoutez du tissu.',
  figures: { washed: 'Lavé', blocks: 'Blocs', each: 'coupe' },
  limited: (by) => {
    const cloth = (['top', 'middle', 'backing'] as const).filter((role) => by.includes(role));
    const more = new Intl.ListFormat('fr').format(cloth.map((role) => missing[role]));
    const others = by.flatMap((one) => (one in limits ? limits[one as keyof typeof limits] : []));
    return [
      ...(more === '' ? [] : [`Avec plus de ${more}, il serait plus grand.`]),
      ...others,
    ].join(' ');
  },
  drawing: (across, down, size) =>
    `Le quilt à l’échelle\u00a0: ${across} blocs en largeur, ${down} en longueur, ${size}.`,
  sewn: (size) => `Cousu, il mesure ${size}.`,
  touching: (sides, corners) => {
    if (sides + corners === 0) return 'Aucun imprimé ne se touche lui-même.';
    if (sides > 0) {
      return `Des imprimés partagent ${count(sides, 'côté', 'côtés')} avec eux-mêmes.`;
    }
    return `Aucun imprimé ne partage de côté avec lui-même\u00a0; ${count(corners, 'coin se touche', 'coins se touchent')}.`;
  },
  others: 'D’autres quilts possibles',
  cutting: 'Couper',
  cuttingHow: (cut) =>
    `Carrés de ${cut}. Les petites pièces d’abord, pour garder les grandes entières.`,
  pieces: 'Pièce',
  squares: 'Carrés',
  left: 'Reste',
  nothingLeft: 'chutes',
  rectangle: (pieces, size) => {
    if (pieces === 1) return size;
    return `${pieces} de ${size}`;
  },
  buy: (squares, role, cut) =>
    `Achetez du ${missing[role]} pour ${count(squares, 'carré', 'carrés')} de ${cut}.`,
  sheet: (name, size, squares) =>
    `${name}, ${size}\u00a0: ${count(squares, 'carré', 'carrés')}, bande par bande.`,
  sheetText: (size, squares) => `${size}, ${count(squares, 'carré', 'carrés')}.`,
  along: 'À couper dans la longueur\u00a0; dessiné couché.',
  plan: 'Planifier ce quilt',
  cautions: 'Avant de couper',
  assumptions: 'Ce que nous avons supposé',
  stale: 'Ce qui est affiché date d’avant.',
  ready: (figures) => `Calculé\u00a0: ${figures}.`,
};
