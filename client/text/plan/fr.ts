import { makeCount } from '../make-count.ts';
import type { PlanWords } from './source.ts';

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

/** Ce que dit le plan en plus de ce que disent tous les éléments, en français. */
export const fr: PlanWords = {
  language: 'fr',
  machines: {
    household: 'une machine de ménage suffit',
    large: 'il lui faut une grande machine',
    laundry: 'il lui faut les machines d’une laverie',
  },
  section: (name) => sections[name] ?? name,
  kinds: { own: 'Ma propre taille', bed: 'Mon propre matelas', grid: 'Tant de blocs' },
  states: { sewn: 'Cousu', washed: 'Lavé' },
  side: (name, state) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Largeur',
    height: 'Longueur',
    'bed.width': 'Largeur du matelas',
    'bed.length': 'Longueur du matelas',
    'bed.drop': 'Retombée sur les côtés',
    'bed.footDrop': 'Retombée au pied',
    columns: 'Blocs en largeur',
    rows: 'Blocs en longueur',
    cut: 'Ou votre propre mesure',
    seam: 'Marge de couture',
    snipDepth: 'Profondeur des crans',
    snipPitch: 'Entre les crans',
  },
  wish: {
    title: 'Votre souhait',
    label: 'Avec vos mots',
    example: 'un plaid, 100 x 130 cm',
    go: 'Planifier',
    kind: 'Taille',
    region: 'Région',
    blocks: (columns, rows) => `${columns} × ${rows} blocs`,
    at: 'Cette taille est',
    read: (what) => `Lu comme ${what}. Les blocs et le tissu se règlent plus bas.`,
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
  plan: 'Votre plan',
  drawing: (across, down, size) =>
    `Le quilt à l’échelle\u00a0: ${across} blocs en largeur, ${down} en longueur, ${size}.`,
  figures: { blocks: 'Blocs', each: 'coupe', cloth: 'Tissu', work: 'Travail' },
  fit: {
    width: ['plus large que souhaité', 'plus étroit que souhaité', 'Aussi large que souhaité'],
    height: ['plus long', 'plus court', 'aussi long que souhaité'],
  },
  between: (from, to) => `Selon le tissu, de ${from} à ${to}.`,
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
  others: 'D’autres plans qui conviennent',
  moreOthers: 'Plus',
  notes: {
    cautions: 'Avant de commencer',
    assumptions: 'Ce que nous avons supposé',
    why: 'D’où vient chaque chiffre',
  },
  stale: 'Le plan affiché est celui d’avant.',
  ready: (across, down, figures) => `Planifié\u00a0: ${across} sur ${down} blocs, ${figures}.`,
};
