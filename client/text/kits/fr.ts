import type { KitLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import { sayFigure } from '../say-figure.ts';
import type { KitsWords } from './source.ts';

const limits: Readonly<Record<KitLimit, string>> = {
  top: 'plus de tissu imprimé',
  middle: 'plus de tissu du milieu',
  backing: 'plus de tissu de dos',
  mostOfOne: 'un plus grand choix d’imprimés',
  distinctPrints: 'plus d’imprimés différents',
};
const parts = { top: 'tissu imprimé', middle: 'tissu du milieu', backing: 'tissu de dos' } as const;
const many = makeCount('fr');

/** Ce que dit la page des kits en plus de ce que disent tous les éléments, en français. */
export const fr: KitsWords = {
  language: 'fr',
  faults: {
    'mixed-currencies': ({ received = 'Une partie', expected = 'une autre monnaie' }) =>
      `${received} côtoie ${expected}. Donnez tout l’argent dans une seule monnaie.`,
    'price-unclear': () =>
      'Tout ne peut pas valoir à la fois. Donnez une marge, une majoration ou un prix.',
    'percents-do-not-sum': ({ received }) =>
      `Ces pourcentages font ensemble ${sayFigure('fr', received) || 'autre chose que 100'}. Amenez-les à 100.`,
  },
  table: 'Rouleaux',
  costs: { in: 'Coût par yard', cm: 'Coût par mètre' },
  kit: {
    title: 'Le kit',
    size: 'Quilt',
    own: 'Ma propre taille',
    grid: 'Tant de blocs',
    width: 'Largeur, lavé',
    height: 'Longueur, lavé',
    columns: 'Blocs en largeur',
    rows: 'Blocs en longueur',
    cut: 'Carrés de',
    best: 'au mieux',
    wanted: 'Kits voulus',
    all: 'tous',
    distinctPrints: 'Imprimés, au moins',
    mostOfOne: 'D’un seul, au plus',
    any: 'au choix',
    spare: 'Carrés de réserve',
  },
  money: {
    title: 'Argent, pour un kit',
    currency: 'Monnaie',
    packaging: 'Emballage',
    labour: 'Main-d’œuvre',
    overhead: 'Frais généraux',
    asked: 'Je fixe',
    ways: { none: 'aucun prix', margin: 'une marge', markup: 'une majoration', price: 'le prix' },
    margin: 'Marge, % du prix',
    markup: 'Majoration, % du coût',
    price: 'Prix',
    unclear: (typed) => `«\u00a0${typed}\u00a0» n’est pas un montant. Écrivez 11,20 ou 11.20.`,
  },
  result: {
    title: 'Kits',
    kits: 'Kits',
    most: (most) => `sur ${most}`,
    cost: 'Coûte',
    costs: (money) => `coûte ${money}`,
    price: 'Se vend',
    none: 'Pas encore de kit',
    empty: 'Écrivez un rouleau de tissu imprimé et un de dos, et les kits apparaissent ici.',
    noneOf: 'Ces rouleaux ne donnent aucun kit entier.',
    limited: (by) => {
      if (by.length === 0) return '';
      const wanted = new Intl.ListFormat('fr').format(by.map((one) => limits[one]));
      return `Pour un kit de plus, il faut ${wanted}.`;
    },
    group: (count) => many(count, 'kit', 'kits'),
    squares: (count, name) => `${count} ${name}`,
    others: (count, role) => `Dans chacun, ${many(count, 'carré', 'carrés')} de ${parts[role]}.`,
    drawing: (squares) => `Les carrés d’un kit, imprimé par imprimé\u00a0: ${squares}.`,
    grid: (columns, rows, cut) =>
      `Chacun est un quilt de ${columns} sur ${rows} blocs, coupe ${cut}.`,
  },
  cutting: {
    title: 'Couper les rouleaux',
    columns: ['Rouleau', 'Bandes', 'Carrés', 'Prend', 'Reste'],
    how: (cut) =>
      `Des bandes de ${cut} en travers du rouleau, puis des carrés. Les numéros comptent les bandes\u00a0; un carré blanc n’est dans aucun kit.`,
    over: (count) => `et ${many(count, 'carré', 'carrés')}`,
    drawing: (name, strips, across) =>
      `${name}\u00a0: ${many(strips, 'bande', 'bandes')} de ${many(across, 'carré', 'carrés')}, à l’échelle.`,
    untouched: 'pas entamé',
  },
  buy: {
    title: (kits) => `Pour ${many(kits, 'kit', 'kits')}, achetez encore`,
    line: (amount, name, squares) =>
      `${amount} de ${name}, pour ${many(squares, 'carré', 'carrés')}.`,
    cloths: { top: 'un autre imprimé', middle: 'tissu du milieu', backing: 'tissu de dos' },
  },
  sheet: {
    title: 'Un kit en rayon',
    rows: {
      materials: 'Tissu',
      labour: 'Main-d’œuvre',
      packaging: 'Emballage',
      overhead: 'Frais généraux',
      cost: 'Coût',
      price: 'Prix',
      marginPercent: 'Marge',
    },
    noMoney: 'Donnez un coût à chaque rouleau, et l’argent apparaît ici.',
    weight: 'Poids',
    content: 'Fibres',
    care: 'Entretien',
  },
  cautions: 'Avant de couper et de vendre',
  assumptions: 'Ce que nous avons supposé',
  stale: 'Ce qui est affiché date d’avant.',
  ready: (figures) => `Calculé\u00a0: ${figures}.`,
};
