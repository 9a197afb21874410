import type { Role, StashLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { StashWords } from './source.ts';

const count = makeCount('es');

const limits: Readonly<Record<Exclude<StashLimit, Role>, string>> = {
  touch: 'Con más bloques, un estampado se tocaría consigo mismo.',
  target: 'Es tan grande como deseabas.',
  shape: 'Hay tela para más bloques, pero no para una fila entera con esta forma.',
  greatest: 'No se puede planear una colcha mayor.',
};

const missing: Readonly<Record<Role, string>> = {
  top: 'tela estampada',
  middle: 'tela de relleno',
  backing: 'tela de trasera',
};

/** Lo que dice la página de retales además de lo que dicen todos los elementos, en español. */
export const es: StashWords = {
  language: 'es',
  table: 'Lo que tienes',
  wish: 'Lo que puede salir',
  cut: 'Cuadrados de',
  anyCut: 'cualquiera',
  cutHint: 'Si lo dejas vacío, se prueban de 6 a 12 in o de 15 a 30 cm.',
  shape: 'Forma',
  shapes: {
    throw: 'Manta de sofá: cuatro de ancho, cinco de alto',
    square: 'Cuadrada',
    tall: 'Alta: dos de ancho, tres de alto',
    wide: 'Ancha: cinco de ancho, cuatro de alto',
    own: 'La que dice la dirección',
  },
  touch: 'Los estampados iguales pueden',
  touches: {
    '': 'tocarse',
    sides: 'no compartir lado',
    corners: 'no tocarse nada',
  },
  seam: 'Margen de costura',
  more: 'Costura y bordes',
  squaring: 'Lo que se corta de cada pieza para enderezarla',
  result: 'Lo que sale',
  none: 'Todavía ninguna colcha',
  empty: 'Escribe una pieza de tela estampada y aquí verás lo que sale.',
  small:
    'Con estas piezas no sale ninguna colcha que se pueda colocar así. Prueba cuadrados más pequeños, deja que los estampados iguales se toquen o añade tela.',
  figures: { washed: 'Lavada', blocks: 'Bloques', each: 'corte' },
  limited: (by) => {
    const cloth = (['top', 'middle', 'backing'] as const).filter((role) => by.includes(role));
    const more = new Intl.ListFormat('es').format(cloth.map((role) => missing[role]));
    const others = by.flatMap((one) => (one in limits ? limits[one as keyof typeof limits] : []));
    return [...(more === '' ? [] : [`Con más ${more} sería mayor.`]), ...others].join(' ');
  },
  drawing: (across, down, size) =>
    `La colcha a escala: ${across} bloques a lo ancho, ${down} a lo largo, ${size}.`,
  sewn: (size) => `Cosida mide ${size}.`,
  touching: (sides, corners) => {
    if (sides + corners === 0) return 'Ningún estampado se toca consigo mismo.';
    if (sides > 0) {
      return `Hay estampados que comparten ${count(sides, 'lado', 'lados')} consigo mismos.`;
    }
    return `Ningún estampado comparte lado consigo mismo; se tocan ${count(corners, 'esquina', 'esquinas')}.`;
  },
  others: 'Otras colchas que salen',
  cutting: 'Cortar',
  cuttingHow: (cut) =>
    `Cuadrados de ${cut}. Primero las piezas pequeñas, para que las grandes queden enteras.`,
  pieces: 'Pieza',
  squares: 'Cuadrados',
  left: 'Sobra',
  nothingLeft: 'recortes',
  rectangle: (pieces, size) => {
    if (pieces === 1) return size;
    return `${pieces} de ${size}`;
  },
  buy: (squares, role, cut) =>
    `Compra ${missing[role]} para ${count(squares, 'cuadrado', 'cuadrados')} de ${cut}.`,
  sheet: (name, size, squares) =>
    `${name}, ${size}: ${count(squares, 'cuadrado', 'cuadrados')}, tira a tira.`,
  sheetText: (size, squares) => `${size}, ${count(squares, 'cuadrado', 'cuadrados')}.`,
  along: 'Se corta a lo largo; aquí está de lado.',
  plan: 'Planear esta colcha',
  cautions: 'Antes de cortar',
  assumptions: 'Lo que hemos supuesto',
  stale: 'Lo que se ve es de antes.',
  ready: (figures) => `Calculado: ${figures}.`,
};
