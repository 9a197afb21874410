import { makeFaultWords } from '../fault-words.ts';
import type { FaultsWords } from './source.ts';

const { where, given, found, bound, meant, isCount } = makeFaultWords('es', ['«', '»']);

const broken = () => 'El planificador no ha podido leer eso. Inténtalo otra vez.';

/** Una frase para cada error, en español. */
export const es: FaultsWords = {
  'malformed-json': broken,
  'malformed-query': broken,
  'wrong-content-type': broken,
  'body-too-large': broken,
  'too-deep': broken,
  'not-found': broken,
  'wrong-method': broken,
  internal: () => 'Algo ha fallado en el planificador. Inténtalo otra vez en un minuto.',
  'unknown-key': (fault) =>
    `${where(fault)} no forma parte de un plan, así que se ha dejado fuera.`,
  'repeated-key': (fault) => `${where(fault)} aparece dos veces. Ponlo una vez.`,
  missing: (fault) => `Falta ${where(fault)}. Ponlo también.`,
  'wrong-type': (fault) => `${given(fault)} no va aquí. Prueba con un número.`,
  'not-one-of': (fault) => `${given(fault)} no está en la lista. Elige algo que esté.`,
  empty: (fault) => `Escribe un número, por ejemplo ${isCount(fault) ? '6' : '21,5'}.`,
  'too-short': (fault) => `Es demasiado corto. ${bound(fault, 'Pon al menos', 'Pon más.')}`,
  'too-long': (fault) => `Es demasiado largo. ${bound(fault, 'Pon como mucho', 'Pon menos.')}`,
  'not-whole': () => 'Pon un número entero.',
  'too-small': (fault) => `Es demasiado pequeño. ${bound(fault, 'Pon al menos', 'Pon más.')}`,
  'too-large': (fault) => `Es demasiado grande. ${bound(fault, 'Pon como mucho', 'Pon menos.')}`,
  'bad-name': (fault) => `${given(fault)} no vale aquí. Usa solo letras y cifras.`,
  'not-a-length': (fault) => `${given(fault)} no es una medida. Escribe 21,5 u 8 1/2 in.`,
  'unclear-comma': (fault) =>
    `${given(fault)} puede ser dos cosas. Escribe ${meant(fault, ' o ')}.`,
  'negative-length': () => 'Una medida nunca baja de cero. Quita el signo menos.',
  'zero-parts': (fault) => `${given(fault)}: nada se divide en 0 partes. Escribe 8½ u 8 1/2.`,
  'two-lengths': (fault) =>
    `${given(fault)} parece dos medidas. Pon una, por ejemplo 21,5 o 2 m 20 cm.`,
  'unknown-unit': (fault) =>
    `La unidad de ${given(fault)} no se conoce. Usa cm, mm, m, in, ft o yd.`,
  'target-unclear': () => 'Pon un tamaño: ancho y largo, un nombre, un colchón o bloques.',
  'size-not-in-region': (fault) =>
    `El tamaño ${given(fault)} no existe allí. Elige otra región u otro tamaño.`,
  'seam-eats-face': (fault) =>
    `Dos márgenes de ${found(fault, 'ese ancho')} no dejan nada del bloque. Corta más grande. ${bound(fault, 'O quédate por debajo de', 'O cose con menos margen.')}`,
  'snips-reach-stitching': (fault) =>
    `Unos piquetes de ${found(fault, 'ese largo')} llegan al pespunte. ${bound(fault, 'Quédate por debajo de', 'Hazlos menos hondos.')}`,
  'roll-too-narrow': (fault) =>
    `Este rollo es demasiado estrecho. ${bound(fault, 'Un bloque necesita', 'No cabe ningún bloque.')} Corta más pequeño o busca tela más ancha.`,
  'layers-unfit': () => 'Pon una delantera, una trasera y como mucho dos capas entre ellas.',
  'repeated-id': (fault) => `Dos estampados se llaman ${given(fault)}. Cámbiale el nombre a uno.`,
  'counts-do-not-sum': () =>
    'Los estampados y la colcha no tienen los mismos bloques. Haz que coincidan.',
  'quilt-too-large': () => 'Es demasiada colcha. Corta bloques más grandes o hazla más pequeña.',
  'after-unlikely': () => 'La muestra no puede haber cambiado tanto. Mídela otra vez.',
  'wish-unclear': () => 'Ahí no hay ningún tamaño. Escribe «100 x 130 cm» o «queen».',
  'mixed-currencies': broken,
  'price-unclear': broken,
  'percents-do-not-sum': broken,
};
