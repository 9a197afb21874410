import type { LayerPull, Role, SwatchNote } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { WashWords } from './source.ts';

const count = makeCount('fr');

const few: Readonly<Record<number, string>> = { 1: 'un lavage', 2: 'deux lavages' };
const times = (washes: number) => few[washes] ?? count(washes, 'lavage', 'lavages');
const along = { length: 'En longueur', width: 'En largeur' } as const;
const layers: Readonly<Record<Role, string>> = {
  top: 'Le dessus',
  middle: 'Le milieu',
  backing: 'Le dos',
};

const cures: Readonly<Record<Role, string>> = {
  top: 'prélavez le tissu du dessus',
  middle: 'choisissez un autre milieu ou lavez un bloc d’essai',
  backing: 'prélavez le tissu du dos',
};

const notes: Readonly<Record<SwatchNote, string>> = {
  'one-specimen':
    'Une seule paire de repères\u00a0: on ne sait rien de la dispersion. Un second échantillon le dirait.',
  'coarse-reading':
    'Le changement est si petit que la règle le brouille. Écartez les repères ou lisez une graduation plus fine.',
  'grew-back':
    'Il a moins rétréci qu’après moins de lavages. Le tissu fait rarement cela\u00a0; mieux vaut mesurer encore.',
};

const pulls: Readonly<Record<LayerPull['says'], string>> = {
  tight: 'tire\u00a0: il veut rétrécir plus que le quilt ne le laisse.',
  even: 'reste plat.',
  puckers: 'va goder\u00a0: le quilt rétrécit plus que lui seul.',
};

/** Ce que dit la page du lavage en plus de ce que disent tous les éléments, en français. */
export const fr: WashWords = {
  language: 'fr',
  along,
  times,
  swatches: {
    title: 'Échantillons',
    example: 'Ces échantillons viennent d’un magasin qui n’existe pas. Écrivez par-dessus, ou',
    clear: 'commencez avec un tableau vide',
    cloth: 'Tissu',
    own: 'Un nom à moi',
    ownName: 'Son nom',
    sandwich: 'Un bloc d’essai matelassé',
    washed: 'Lavages',
    before: 'Avant',
    after: 'Après',
    row: (index) => `Échantillon ${index}`,
    cell: (index, way, end) =>
      `Échantillon ${index}, ${along[way].toLowerCase()}, ${end.toLowerCase()}`,
    fault: (way, end) => `${along[way]}, ${end.toLowerCase()}`,
    diagonals: 'Diagonales, pour le biais',
    diagonal: (index, name) => `Échantillon ${index}, diagonale ${name}`,
    explainDiagonals:
      'Après le lavage, d’un coin à l’autre du carré\u00a0: de A à C, puis de B à D.',
    waits: 'Une paire avec un seul chiffre attend l’autre.',
    add: 'Ajouter un tissu',
    remove: (name) => `Enlever ${name}`,
    unused:
      'Aucune épaisseur du quilt n’est de ce tissu\u00a0: il est mesuré, le quilt reste tel quel.',
  },
  ruler: {
    shrinks: 'rétrécit de',
    grows: 's’allonge de',
    mean: (low, high) => `La moyenne est entre ${low} et ${high}\u00a0;`,
    next: (low, high, sure) => `une nouvelle pièce, entre ${low} et ${high}, ${sure} fois sur 100.`,
    count: (n, sd) => `${count(n, 'mesure', 'mesures')}, dispersion ${sd}.`,
    reading: (blur) => `La règle seule brouille une mesure de ${blur}.`,
    usual: 'En tirets, ce que la table suppose au premier lavage\u00a0:',
    usualOf: (way, usual, low, high) => `${along[way].toLowerCase()} ${usual}, de ${low} à ${high}`,
    label: (way, change) => `${way}\u00a0: ${change}`,
    notes,
  },
  quilt: {
    title: 'Votre quilt',
    kind: 'La taille donnée est',
    kinds: { wanted: 'voulue, lavé', sewn: 'déjà cousue' },
    width: 'Largeur',
    height: 'Longueur',
    none: 'Aucun',
    prewashed: (role) => `${role}\u00a0: lavé avant la coupe`,
    more: 'Avec quelle certitude, à combien près',
    washes: 'Parler de ces lavages',
    washesHint: 'La taille suit le premier.',
    fit: 'À combien près',
    confidence: 'Juste si souvent',
    turned: 'Un bloc sur deux tourné, pour qu’il rétrécisse autant dans les deux sens',
  },
  result: {
    label: 'Le quilt avant et après',
    sew: 'Cousez',
    sewn: 'Cousu',
    after: (washes) => `Après ${times(washes)}`,
    either: 'À plus ou moins',
    shrink: 'Rétrécit',
    drawing: (sewn, washed) => `Deux contours à l’échelle\u00a0: cousu ${sewn}, lavé ${washed}.`,
    shown: 'Dessiné après tant de lavages',
    columns: (unit) => ['Lavages', `Taille, ${unit}`, 'Au moins', 'Au plus'],
    percentColumns: ['Lavages', 'Rétrécit, largeur et longueur', 'Au moins', 'Au plus'],
    nearest: (columns, rows, cut) =>
      `Au plus près en blocs entiers\u00a0: ${columns} en largeur, ${rows} en longueur, coupe ${cut}.`,
    nearestSize: (sewn, washed, fit) => `Cela fait ${sewn} cousu et ${washed} lavé\u00a0: ${fit}.`,
    fit: {
      width: ['plus large', 'plus étroit', 'aussi large'],
      height: ['plus long', 'plus court', 'aussi long'],
    },
    exact: (sewn) => `Exactement, ce serait ${sewn} cousu.`,
    plan: 'Planifier ce quilt avec ces échantillons',
    halve: (blocks) =>
      `Avec ${count(blocks, 'bloc d’essai matelassé, lavé et mesuré', 'blocs d’essai matelassés, lavés et mesurés')} dans les deux sens, le doute serait réduit de moitié.`,
    noHalve:
      'Aucun nombre de blocs d’essai ne réduirait le doute de moitié\u00a0: le tissu lui-même varie autant.',
    keys: { sewn: 'cousu', washed: 'lavé', doubt: 'du plus petit au plus grand' },
  },
  course: {
    title: 'Lavage après lavage',
    drawing: (washes) =>
      `Rétrécissement en pour cent sur ${count(washes, 'lavage', 'lavages')}, une ligne par tissu.`,
    washes: 'lavages',
    shrink: 'rétrécit, %',
    quilt: 'Le quilt',
    quiltAcross: 'Le quilt, largeur',
    quiltDown: 'Le quilt, longueur',
    limit: (limit) => `tend vers ${limit}`,
    error: (error) => `ajusté à ${error} près`,
    key: 'Les points sont mesurés, les lignes ajustées. Les barres montrent de combien le quilt peut s’écarter.',
  },
  advice: {
    title: 'Comment les épaisseurs s’entendent',
    pull: (role, says) => `${layers[role]} ${pulls[says]}`,
    by: (length, width) => `${length} en longueur, ${width} en largeur, en points de pour cent`,
    prewash: 'Prélaver',
    noPrewash: 'Pas besoin de prélaver',
    why: ({ reasons }, tight) => {
      const pulled = reasons.includes('pull')
        ? `Les épaisseurs tirent trop différemment\u00a0: ${cures[tight ?? 'backing']}, sinon l’autre face va goder.`
        : '';
      const doubted = reasons.includes('doubt')
        ? 'La taille lavée est moins sûre qu’il ne vous faut\u00a0: prélavez, ou mesurez plus d’échantillons.'
        : '';
      return [
        pulled ||
          (doubted === ''
            ? 'Les épaisseurs tirent presque autant\u00a0: elles se placeront ensemble.'
            : ''),
        doubted,
      ]
        .join(' ')
        .trim();
    },
    skew: 'Biais',
    skewText: (cloth, skew, lean, side) =>
      `${cloth}\u00a0: ${skew}. Un bloc de ${side} penche de ${lean}.`,
    drawing: 'Un bloc droit comme à la coupe, et comme il penche\u00a0; exagéré quatre fois.',
  },
  marking: {
    title: 'Marquer, laver, mesurer',
    drawing: (marks, specimen) =>
      `Un échantillon carré de ${specimen}, marqué à ${marks} d’écart trois fois dans chaque sens, coupé loin des lisières.`,
    selvage: 'lisière',
    tenth: 'un dixième de la largeur',
    roll: 'dans la longueur du rouleau',
    steps: (marks, specimen, far) => [
      `Coupez un échantillon carré de ${specimen}, droit fil, hors du dixième de la largeur qui borde chaque lisière.`,
      `Marquez trois paires de points à ${marks} d’écart dans la longueur du rouleau et trois en largeur. ${far}`,
      'Notez le sens du rouleau. Surjetez les bords ou piquez-les en zigzag.',
      'Lavez-le et séchez-le comme le sera le quilt. Laissez-le une heure à plat.',
      'Mesurez encore les mêmes paires, au huitième de pouce ou au millimètre, et écrivez-les.',
    ],
    far: {
      in: 'Des repères à 18 in sur 24 in se lisent plus finement.',
      cm: 'Des repères à 46 cm sur 61 cm se lisent plus finement.',
    },
    rows: 'Les paires d’un échantillon disent si vous mesurez juste. Des échantillons pris ailleurs sur le rouleau disent combien le tissu varie\u00a0: trois suffisent bien.',
    source: 'D’après AATCC TM135 et ISO 5077.',
    print: 'Imprimer une feuille de repères',
    why: (marks) =>
      `La feuille porte des repères à ${marks}, le plus qui tienne à la fois sur Letter et A4. Le changement est un pourcentage, tout écart convient donc.`,
  },
  sheet: {
    title: 'Feuille de repères',
    check: 'Imprimez à 100\u00a0%. Mesurez d’abord cette ligne\u00a0:',
    checkAfter:
      'Si elle n’a pas cette longueur, désactivez «\u00a0ajuster à la page\u00a0» et imprimez encore.',
    how: 'Posez la feuille sur le tissu. Piquez une épingle au centre de chaque croix, marquez le tissu d’un point, et notez le sens du rouleau.',
    cloth: 'Tissu',
    date: 'Jour',
    washes: 'Lavages',
    roll: 'dans la longueur du rouleau',
    apart: (marks) => `à ${marks} d’écart`,
    before: 'Avant',
    after: 'Après',
    alongRow: ['Long 1', 'Long 2', 'Long 3'],
    acrossRow: ['Large 1', 'Large 2', 'Large 3'],
  },
  table: {
    title: 'Ce que la table suppose',
    columns: ['Tissu', 'Longueur', 'Largeur'],
    explain: 'Pour cent de rétrécissement au premier lavage, avant que vous mesuriez.',
  },
  notes: { cautions: 'Avant de laver', assumptions: 'Ce que nous avons supposé' },
  stale: 'Les chiffres affichés sont ceux d’avant.',
  ready: (figures) => `Calculé\u00a0: ${figures}.`,
};
