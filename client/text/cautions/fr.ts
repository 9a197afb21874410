import type { CautionCode } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { CautionFigures, SaidCaution } from './en.ts';
import type { CautionsWords } from './source.ts';

type Say = (severity: SaidCaution['severity'], figures: CautionFigures) => string;

const count = makeCount('fr');

const sentences: Readonly<Record<CautionCode, Say>> = {
  'rotary-cutter': () =>
    'Un cutter rotatif est une lame\u00a0: coupez en vous éloignant du corps, gardez les doigts loin du bord de la règle et refermez la lame chaque fois que vous le posez.',
  'repetitive-snipping': (_, { snips }) =>
    `Ce quilt compte ${snips === undefined ? 'beaucoup de crans' : count(snips, 'cran', 'crans')}. Prenez des ciseaux affûtés à ressort, changez de main et reposez-vous avant d’avoir mal.`,
  'needle-at-crossings': (_, { thickness, needle }) =>
    `Là où quatre coins se rejoignent, il y a ${thickness === undefined ? 'beaucoup de tissu' : `environ ${thickness} de tissu`} sous le pied. Prenez ${needle === undefined ? 'une grosse aiguille' : `une aiguille ${needle}`}, cousez-y lentement ou tournez le volant à la main, et portez des lunettes\u00a0: les aiguilles cassent.`,
  'snip-near-seam': (severity, { clearance }) => {
    const left = clearance === undefined ? 'très peu' : clearance;
    if (severity === 'danger') {
      return `Il ne reste ici que ${left} entre le cran et la piqûre\u00a0: un faux mouvement coupe la couture, et le quilt se défait au lavage. Crantez moins profond ou prenez plus de marge.`;
    }
    if (severity === 'care') {
      return `Il reste ${left} entre le cran et la piqûre. Allez lentement, et repiquez toute couture que vous entamez.`;
    }
    return `${clearance === undefined ? '' : `Il reste ${clearance} entre le cran et la piqûre. `}Arrêtez chaque cran bien avant la couture.`;
  },
  'infant-sleep': (severity) =>
    severity === 'danger'
      ? 'Pas pour un bébé qui dort. Avant douze mois, aucun quilt, aucune couverture ni autre literie libre n’a sa place là où il dort\u00a0: un matelas ferme et plat, un drap-housse bien tendu, le bébé sur le dos. Gardez ce quilt pour jouer par terre sous vos yeux, et pour plus tard. Les fils qui pendent et les franges ne vont pas dans la bouche d’un bébé.'
      : 'Aucun quilt n’a sa place là où dort un bébé de moins de douze mois.',
  'dryer-lint': () =>
    'Les franges neuves perdent énormément de peluches. Nettoyez le filtre du sèche-linge après chaque charge, et celui du lave-linge aussi\u00a0; ne faites jamais tourner un sèche-linge au filtre bouché. Aux États-Unis, environ 2900 incendies de sèche-linge ont été signalés dans des logements chaque année de 2008 à 2010, le défaut de nettoyage étant la première cause.',
  'washer-load': (_, { machine }) =>
    `Ce quilt est lourd pour un lave-linge de ménage, mouillé surtout. Portez-le ${machine === 'laundry' ? 'dans une laverie aux machines professionnelles' : 'à une grande machine'}, et comparez son poids à sec avec la charge prévue pour elle.`,
  flammability: () =>
    'Un tissu gratté et à franges prend feu plus vite qu’un tissu lisse. Tenez-le loin des flammes et des radiateurs, et demandez à l’autorité de chez vous avant de vendre.',
  'selling-children': () =>
    'Ce qui se vend pour les enfants demande dans bien des pays des essais, un certificat et une étiquette de traçabilité. Demandez à l’autorité du lieu où vous vendez.',
  'label-rules': (_, { isDraftLabel }) =>
    isDraftLabel === true
      ? 'Cette étiquette est un brouillon. Les règles sur les fibres changent d’un pays à l’autre, et les fibres données ici sont celles qu’un tel tissu a d’ordinaire\u00a0: fiez-vous au rouleau, et demandez à l’autorité du lieu où vous vendez.'
      : 'Les étiquettes de fibres et d’entretien suivent des règles différentes selon les pays. Voyez celles du lieu où vous vendez.',
  'dye-bleed': () =>
    'Un tissu sombre ou rouge peut déteindre au premier lavage. Mouillez une chute, pressez-la sur du tissu blanc, et prélavez ce qui tache.',
  'unmeasured-shrink': () =>
    'Une part du rétrécissement vient d’une table de tissus et non du vôtre. Matelassez et lavez un bloc d’essai de votre tissu, vous en saurez plus.',
};

/** Comment les mises en garde se disent en français. */
export const fr: CautionsWords = {
  language: 'fr',
  say: ({ code, severity, text }, figures) =>
    (Object.hasOwn(sentences, code) && sentences[code as CautionCode](severity, figures)) || text,
};
