import { makeCount } from '../make-count.ts';
import type { ClothWords } from './source.ts';

const count = makeCount('fr');

/** Ce que disent les tableaux de tissus, sur toutes les pages, en français. */
export const fr: ClothWords = {
  language: 'fr',
  columns: {
    role: 'Pour',
    id: 'Nom',
    print: 'Imprimé',
    width: 'Largeur',
    length: 'Longueur',
    count: 'Pièces',
    cost: 'Coût',
  },
  cell: (row, column) => `Ligne ${row}, ${column.toLowerCase()}`,
  remove: (name) => `Enlever ${name}`,
  row: (row) => `ligne ${row}`,
  prints: 'Plusieurs pièces portent le même imprimé',
  printsHint: 'Donnez le même mot sous «\u00a0Imprimé\u00a0» aux pièces qui le partagent.',
  paste:
    'Collez dans une cellule ce qui vient d’un tableur. Un fichier a une colonne pour chacun de',
  roles: { top: 'Dessus', middle: 'Milieu', backing: 'Dos' },
  noNames: 'Donnez-lui un nom à lui.',
  noRole: 'Choisissez dessus, milieu ou dos.',
  open: 'Ouvrir un CSV',
  save: 'Enregistrer en CSV',
  clear: 'Commencer avec un tableau vide',
  clearInvented: 'commencez avec un tableau vide',
  undo: 'Remettre ce qu’il y avait',
  opened: (rows) => `${count(rows, 'ligne lue', 'lignes lues')} dans le fichier.`,
  pasted: (rows) => `${count(rows, 'ligne collée', 'lignes collées')}.`,
  cleared: 'Le tableau est vide.',
  invented: 'Ces tissus viennent d’un magasin qui n’existe pas. Écrivez par-dessus, ou',
  file: {
    'empty-file': () =>
      'Il n’y a pas de tissu dans ce fichier. La première ligne nomme les colonnes, les autres un tissu chacune.',
    'no-column': ({ column = '' }) =>
      `La ligne 1 ne nomme aucune colonne «\u00a0${column}\u00a0». Mettez ce mot au-dessus de la colonne et rouvrez le fichier.`,
    'stray-quote': ({ row = 0 }) =>
      `À la ligne ${row}, un guillemet est mal placé. Mettez la cellule entre guillemets et doublez ceux qu’elle contient.`,
    'too-many-rows': ({ row = 0, most = 0 }) =>
      `Le tableau prend ${most} lignes, et la ligne ${row} est de trop. Rien n’a été repris\u00a0; partagez la liste.`,
    unreadable: () => 'Ce fichier ne peut pas être lu. Enregistrez-le en CSV et rouvrez-le.',
  },
  kept: 'Ce que vous avez écrit reste tel quel.',
  cuts: {
    across: (width) => `${width} en travers`,
    wanted: (pieces) => `${pieces} à couper`,
    turned: 'en tirets\u00a0: tourné d’un quart',
    alike: (sheets) => `${sheets} identiques`,
  },
};
