import { makeCount } from '../make-count.ts';
import type { WorkWords } from './source.ts';

const count = makeCount('fr');

/** Ce que disent la vue d’une étape et la fiche pour un cours, en français. */
export const fr: WorkWords = {
  focus: {
    title: 'Le travail, étape par étape',
    step: (at, all) => `Étape ${at} sur ${all}`,
    close: 'Retour au plan',
    back: 'Retour',
    next: 'Fait, suivante',
    last: 'Tout est fait',
    done: 'Cette étape est faite',
    keys: 'Au clavier, les flèches tournent les pages et laissent les coches en place.',
  },
  handOut: {
    title: 'Fiche pour un cours',
    explain:
      'Deux pages à imprimer\u00a0: ce qu’il faut apporter, et les étapes avec les mesures de ce quilt.',
    heading: 'Titre',
    headingExample: 'Soirée quilt à franges, mardi à six heures',
    usual: 'Cours de quilt à franges',
    pupils: 'Élèves',
    note: 'Un mot de votre part, si vous voulez',
    noteExample: 'Apportez votre machine, sa pédale et de quoi boire.',
    print: 'Imprimer deux pages',
    cancel: 'Retour au plan',
    fault: (most) => `Donnez un nombre entier d’élèves, de 1 à ${most}.`,
    busy: 'Le nécessaire du cours est en calcul.',
  },
  sheet: {
    cloth: 'Tissu',
    squares: (cut) => `Carrés de ${cut}`,
    each: 'Chaque élève achète',
    ofEach: '(de chaque tissu)',
    all: (pupils) => `Le cours achète, ${count(pupils, 'élève', 'élèves')}`,
    list: 'Ce qu’il faut apporter',
    thread: 'Fil, au plus environ',
    bobbins: 'Canettes, pleines',
    needles: (size) => `Aiguilles de machine, grosseur ${size}`,
    blades: 'Lames de cutter rotatif, neuves',
    also: 'Et par élève\u00a0: une machine à coudre, avec pied double entraînement s’il y en a un, un cutter rotatif avec règle et tapis, des ciseaux à ressort, des épingles, des lunettes.',
    bought: 'Pour le cours, chaque tissu est acheté d’un seul tenant et coupé en une fois.',
    lacking: (squares) => `il manque ${count(squares, 'carré', 'carrés')}`,
    sizes: 'Mesures',
    blocks: 'Blocs',
    blocksText: (across, down, all) => `${across} en largeur, ${down} en longueur\u00a0: ${all}`,
    cut: 'Coupe',
    seam: 'Marge de couture',
    snips: 'Crans',
    snipsText: (depth, pitch) => `${depth} de profondeur, tous les ${pitch}`,
    clearance: 'Reste avant la couture',
    sewn: 'Cousu',
    washed: 'Lavé',
    work: 'Travail à la table',
    weight: 'Poids à sec',
    where: 'La place de chaque imprimé',
    whereText: 'Le rang A est en haut. L’épingle marque le bloc en haut à gauche.',
    steps: 'Le travail dans l’ordre',
    care: 'Attention',
  },
};
