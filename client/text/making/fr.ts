import { makeCount } from '../make-count.ts';
import type { MakingWords } from './source.ts';

const count = makeCount('fr');

const sections: Readonly<Record<string, string>> = {
  bulk: 'Épaisseur',
  class: 'Cours',
  fabrics: 'Tissu',
  fringe: 'Franges',
  grid: 'Blocs',
  mismatch: 'Bouts de rangs',
  size: 'Taille',
  steps: 'Étapes',
  thread: 'Fil',
  time: 'Temps',
  weight: 'Poids',
  wish: 'Souhait',
  work: 'Travail',
};

/** Ce que dit le plan de ce dont le quilt est fait et de ce qu’il demande, en français. */
export const fr: MakingWords = {
  language: 'fr',
  machines: {
    household: 'une machine de ménage suffit',
    large: 'il lui faut une grande machine',
    laundry: 'il lui faut les machines d’une laverie',
  },
  section: (name) => sections[name] ?? name,
  edges: {
    cut: 'Ou votre propre mesure',
    seam: 'Marge de couture',
    snipDepth: 'Profondeur des crans',
    snipPitch: 'Entre les crans',
  },
  blocks: {
    title: 'Blocs',
    cut: 'Carrés de',
    choose: 'Au mieux',
    more: 'Couture et crans',
    explain:
      'La marge de couture se dresse sur l’endroit. Crantée et lavée, elle devient la frange.',
  },
  cloth: {
    title: 'Tissu',
    prints: 'Imprimés du dessus',
    fewer: 'Un imprimé de moins',
    more: 'Un imprimé de plus',
    none: 'Aucun',
    bolts: 'Rouleaux et prélavage',
    width: (role) => `${role}, laize`,
    prewashed: (role) => `${role}\u00a0: lavé avant la coupe`,
    turned: 'Tourner un bloc sur deux, pour qu’il rétrécisse autant dans les deux sens',
  },
  shopping: {
    title: 'Acheter et couper',
    columns: ['Tissu', 'Achat', 'Bandes', 'Carrés'],
    each: (squares) => `× ${squares}`,
    idle: (prints) =>
      `Il ne reste aucun bloc pour ${count(prints, 'imprimé', 'imprimés')}. Prenez-en moins.`,
    how: (cut) =>
      `Coupez en travers du rouleau des bandes de ${cut} de haut, puis chacune en carrés. La réserve est comprise.`,
    thread: 'Fil',
    threadText: (amount, bobbins, saved) =>
      `Au plus environ ${amount}, dont la moitié sur ${count(bobbins, 'canette', 'canettes')}. Coudre à la chaîne économise ${saved}.`,
  },
  facts: {
    title: 'À quoi s’attendre',
    work: 'Travail',
    workText: (hours, snips) =>
      `Environ ${hours} à la table${snips && `, dont ${snips} à cranter`}.`,
    weight: 'Poids',
    weightText: (dry, wet, machine) => `${dry} sec, ${wet} mouillé\u00a0: ${machine}.`,
    rows: 'Bouts de rangs',
    rowsText: (ease, middle, end) =>
      `Assemblés depuis le milieu, ${middle} sur 100 se rejoignent à ${ease} près\u00a0; depuis un bout, ${end}.`,
    shrink: 'Rétrécit',
    shrinkText: (across, down) => `${across} en largeur, ${down} en longueur.`,
  },
  notes: {
    cautions: 'Avant de commencer',
    assumptions: 'Ce que nous avons supposé',
    why: 'D’où vient chaque chiffre',
  },
  ways: {
    title: 'Continuer avec ce plan',
    counter: 'Au comptoir de coupe',
    compare: 'Le comparer',
    layout: 'Déplacer les blocs',
  },
};
