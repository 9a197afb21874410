import { makeFaultWords } from '../fault-words.ts';
import type { FaultsWords } from './source.ts';

const { where, given, found, bound, meant, isCount } = makeFaultWords('fr', ['«\u00a0', '\u00a0»']);

const broken = () => 'Le planificateur n’a pas pu lire cela. Essayez encore.';

/** Une phrase pour chaque erreur, en français. */
export const fr: FaultsWords = {
  'malformed-json': broken,
  'malformed-query': broken,
  'wrong-content-type': broken,
  'body-too-large': broken,
  'too-deep': broken,
  'not-found': broken,
  'wrong-method': broken,
  internal: () => 'Le planificateur est en panne. Essayez encore dans une minute.',
  'unknown-key': (fault) => `${where(fault)} ne fait partie d’aucun plan et a été laissé de côté.`,
  'repeated-key': (fault) => `${where(fault)} est donné deux fois. Donnez-le une fois.`,
  missing: (fault) => `Il manque ${where(fault)}. Donnez-le aussi.`,
  'wrong-type': (fault) => `${given(fault)} n’a pas sa place ici. Essayez un nombre.`,
  'not-one-of': (fault) => `${given(fault)} n’est pas dans la liste. Choisissez-y autre chose.`,
  empty: (fault) => `Écrivez un nombre, par exemple ${isCount(fault) ? '6' : '21,5'}.`,
  'too-short': (fault) => `C’est trop court. ${bound(fault, 'Donnez au moins', 'Donnez plus.')}`,
  'too-long': (fault) => `C’est trop long. ${bound(fault, 'Donnez au plus', 'Donnez moins.')}`,
  'not-whole': () => 'Donnez un nombre entier.',
  'too-small': (fault) => `C’est trop petit. ${bound(fault, 'Prenez au moins', 'Prenez plus.')}`,
  'too-large': (fault) => `C’est trop grand. ${bound(fault, 'Prenez au plus', 'Prenez moins.')}`,
  'bad-name': (fault) =>
    `${given(fault)} ne convient pas ici. Tenez-vous-en aux lettres et aux chiffres.`,
  'not-a-length': (fault) => `${given(fault)} n’est pas une longueur. Écrivez 21,5 ou 8 1/2 in.`,
  'unclear-comma': (fault) =>
    `${given(fault)} peut se lire de deux façons. Écrivez ${meant(fault, ' ou ')}.`,
  'negative-length': () => 'Une longueur n’est jamais au-dessous de zéro. Enlevez le signe moins.',
  'zero-parts': (fault) =>
    `${given(fault)}\u00a0: rien ne se partage en 0 part. Écrivez 8½ ou 8 1/2.`,
  'two-lengths': (fault) =>
    `${given(fault)} se lit comme deux longueurs. Donnez-en une, par exemple 21,5 ou 2 m 20 cm.`,
  'unknown-unit': (fault) =>
    `L’unité de ${given(fault)} n’est pas connue. Prenez cm, mm, m, in, ft ou yd.`,
  'target-unclear': () =>
    'Donnez une taille\u00a0: largeur et longueur, un nom, un matelas ou des blocs.',
  'size-not-in-region': (fault) =>
    `La taille ${given(fault)} n’existe pas là-bas. Choisissez une autre région ou une autre taille.`,
  'seam-eats-face': (fault) =>
    `Deux marges de ${found(fault, 'cette largeur')} ne laissent rien du bloc. Coupez plus grand. ${bound(fault, 'Ou restez sous', 'Ou prenez moins de marge.')}`,
  'snips-reach-stitching': (fault) =>
    `Des crans de ${found(fault, 'cette profondeur')} atteignent la piqûre. ${bound(fault, 'Restez sous', 'Crantez moins profond.')}`,
  'roll-too-narrow': (fault) =>
    `Ce rouleau est trop étroit. ${bound(fault, 'Il faut à un bloc', 'Aucun bloc n’y tient.')} Coupez plus petit ou prenez un tissu plus large.`,
  'layers-unfit': () => 'Donnez un dessus, un dos et au plus deux épaisseurs entre eux.',
  'repeated-id': (fault) => `Deux imprimés s’appellent ${given(fault)}. Renommez-en un.`,
  'counts-do-not-sum': () =>
    'Les imprimés et le quilt n’ont pas le même nombre de blocs. Accordez-les.',
  'quilt-too-large': () =>
    'C’est trop de quilt. Coupez des blocs plus grands ou faites-le plus petit.',
  'after-unlikely': () => 'L’échantillon ne peut pas avoir tant changé. Mesurez-le encore.',
  'wish-unclear': () =>
    'Il n’y a pas de taille là-dedans. Écrivez «\u00a0100 x 130 cm\u00a0» ou «\u00a0queen\u00a0».',
  'mixed-currencies': broken,
  'price-unclear': broken,
  'percents-do-not-sum': broken,
};
