import { makeCount } from '../make-count.ts';
import type { StepWords } from './en.ts';
import { readFigures, type StepFigures } from './read-figures.ts';
import type { StepsWords } from './source.ts';

const count = makeCount('fr');
const list = new Intl.ListFormat('fr');
const { format } = new Intl.NumberFormat('fr');

const bobbins = ({ number }: StepFigures) =>
  number('bobbins') > 0
    ? ` La canette se vide ${count(number('bobbins'), 'fois', 'fois')} à cette étape.`
    : '';

const chain = ({ number }: StepFigures) =>
  number('links') > 0
    ? 'Passez les blocs l’un après l’autre sans couper le fil.'
    : 'Coupez le fil après chaque bloc.';

const often = (within: number) =>
  within > 99 ? 'Presque tous' : `Environ ${Math.round(within)} sur 100`;

const ends = ({ number, length, above }: StepFigures) => {
  const expected =
    number('most') > 0
      ? ` La moitié des bouts s’écartent de moins de ${above('half')}, 95 sur 100 de moins de ${above('most')}\u00a0; depuis un bout, ce serait ${above('mostFromOneEnd')}.`
      : '';
  if (number('ease') <= 0) return `${expected} Décousez ce qui ne se rejoint pas.`;
  return `${expected} ${often(number('within'))} se rejoignent à ${length('ease')} près, et cela disparaît au lavage. Décousez ce qui s’écarte plus.`;
};

const steps: Readonly<Record<string, (figures: StepFigures) => StepWords>> = {
  swatch: () => [
    'Coudre un bloc d’essai, le mesurer, le laver, le mesurer encore',
    'Il dit mieux que toute table comment votre tissu rétrécit.',
  ],
  prewash: ({ roles }) => [
    `Prélaver\u00a0: ${list.format(roles('roles'))}`,
    'Lavez et séchez le tissu comme le sera le quilt, puis repassez-le bien à plat.',
  ],
  cut: ({ number, length }) => [
    `Couper ${count(number('pieces'), 'carré', 'carrés')} de ${length('cut')}`,
    `Coupez des bandes de ${length('cut')} en travers du rouleau, puis les carrés. ${count(number('layers'), 'épaisseur', 'épaisseurs')}, réserve comprise.`,
  ],
  stack: ({ number, fabrics }) => [
    `Empiler ${count(number('blocks'), 'bloc', 'blocs')} de ${count(number('layers'), 'épaisseur', 'épaisseurs')}`,
    `De bas en haut\u00a0: ${fabrics('fabrics').join(', ')}\u00a0; celle du dessus, endroit vers le haut. Tournez un peu un bloc sur deux de la pile, pour qu’ils se séparent bien.${number('prints') > 1 ? ` Faites une pile pour chacun des ${number('prints')} imprimés.` : ''}`,
  ],
  'quilt-first': (figures) => [
    'Matelasser les blocs d’un coin à l’autre',
    `Aiguille ${figures.text('needle')}. ${chain(figures)}${bobbins(figures)}`,
  ],
  part: () => ['Séparer la chaîne', 'Coupez les fils entre les blocs.'],
  'quilt-second': (figures) => [
    'Matelasser l’autre diagonale',
    `Chaque bloc a maintenant son X. ${chain(figures)}${bobbins(figures)}`,
  ],
  snip: (figures) => {
    const { number, length, gap, minutes } = figures;
    const fewer = number('snips') - number('snipsJoined');
    const saved = Math.round(minutes - number('minutesJoined'));
    const later =
      number('blocks') > 1
        ? `Avant l’assemblage, c’est plus facile\u00a0; après, c’est la tradition\u00a0: les deux marges à la fois, ${count(fewer, 'cran', 'crans')} de moins${saved > 0 ? `, environ ${count(saved, 'minute', 'minutes')} de moins` : ''}, mais chacun dans deux fois plus de tissu.`
        : 'Arrêtez chaque cran bien avant la piqûre.';
    return [
      `Cranter les quatre côtés\u00a0: ${count(number('snips'), 'cran', 'crans')}`,
      `De ${length('depth')} de profondeur, tous les ${length('pitch')}, à ${gap('clearance')} de la couture à venir. ${later}`,
    ];
  },
  layout: ({ number, text }) => [
    `Poser ${number('columns')} sur ${number('rows')} blocs et prendre une photo`,
    `Marquez d’une épingle le bloc en haut à gauche${number('prints') > 1 ? `, imprimé ${text('topLeft')}` : ''}. Éloignez les imprimés semblables.`,
  ],
  join: (figures) => [
    `Assembler les blocs de chaque rang\u00a0: ${count(figures.number('rows'), 'rang', 'rangs')} de ${figures.number('columns')}`,
    `Dos contre dos, avec une marge de ${figures.length('seam')}, pour que les bords vifs se dressent sur l’endroit.${bobbins(figures)}`,
  ],
  'join-rows': (figures) => {
    const { number } = figures;
    const [from, to] = [number('from'), number('to')];
    const middle = from < to ? `entre les blocs ${from} et ${to}` : `au bloc ${from}`;
    return [
      'Assembler les rangs',
      `Commencez au milieu, ${middle}\u00a0: faites-le coïncider et épinglez vers les deux côtés.${ends(figures)}${bobbins(figures)}`,
    ];
  },
  border: (figures) => [
    'Piquer tout le tour du quilt',
    `À ${figures.length('seam')} du bord, ${count(figures.number('passes'), 'fois', 'fois')}, ${figures.length('perimeter')} par tour. Crantez ensuite le bord encore entier.${bobbins(figures)}`,
  ],
  trim: () => ['Couper les fils qui dépassent', 'Devant et derrière, avant le premier lavage.'],
  wash: ({ mass, text }) => [
    'Laver, secouer, sécher et ôter les peluches',
    `Mouillé, il pèse environ ${format(mass('wet'))} ${text('unit')}. Secouez-le dehors entre lave-linge et sèche-linge. Les franges s’adoucissent à chaque lavage.`,
  ],
};

/** Comment les étapes du travail se disent en français. */
export const fr: StepsWords = {
  language: 'fr',
  say: (step, manner) =>
    (Object.hasOwn(steps, step.id) && steps[step.id]?.(readFigures(step, manner))) || [
      step.do,
      step.detail,
    ],
};
