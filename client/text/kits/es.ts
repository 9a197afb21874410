import type { KitLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import { sayFigure } from '../say-figure.ts';
import type { KitsWords } from './source.ts';

const limits: Readonly<Record<KitLimit, string>> = {
  top: 'más tela estampada',
  middle: 'más tela de relleno',
  backing: 'más tela de trasera',
  mostOfOne: 'más estampados donde elegir',
  distinctPrints: 'más estampados distintos',
};
const parts = { top: 'tela estampada', middle: 'relleno', backing: 'trasera' } as const;
const many = makeCount('es');

/** Lo que dice la página de kits además de lo que dicen todos los elementos, en español. */
export const es: KitsWords = {
  language: 'es',
  faults: {
    'mixed-currencies': ({ received = 'Una parte', expected = 'otra moneda' }) =>
      `${received} está junto a ${expected}. Pon todo el dinero en una sola moneda.`,
    'price-unclear': () => 'No puede valer todo a la vez. Pon un margen, un recargo o un precio.',
    'percents-do-not-sum': ({ received }) =>
      `Estos porcentajes suman ${sayFigure('es', received) || 'otra cosa que 100'}. Haz que sumen 100.`,
  },
  table: 'Rollos',
  costs: { in: 'Coste por yarda', cm: 'Coste por metro' },
  kit: {
    title: 'El kit',
    size: 'Colcha',
    own: 'Mi propio tamaño',
    grid: 'Tantos bloques',
    width: 'Ancho, lavada',
    height: 'Largo, lavada',
    columns: 'Bloques a lo ancho',
    rows: 'Bloques a lo largo',
    cut: 'Cuadrados de',
    best: 'lo que mejor encaje',
    wanted: 'Kits que quieres',
    all: 'todos',
    distinctPrints: 'Estampados, al menos',
    mostOfOne: 'De uno, como mucho',
    any: 'cualquiera',
    spare: 'Cuadrados de reserva',
  },
  money: {
    title: 'Dinero, por kit',
    currency: 'Moneda',
    packaging: 'Embalaje',
    labour: 'Mano de obra',
    overhead: 'Gastos generales',
    asked: 'Yo fijo',
    ways: { none: 'ningún precio', margin: 'un margen', markup: 'un recargo', price: 'el precio' },
    margin: 'Margen, % del precio',
    markup: 'Recargo, % del coste',
    price: 'Precio',
    unclear: (typed) => `«${typed}» no es un importe. Escribe 11,20 o 11.20.`,
  },
  result: {
    title: 'Kits',
    kits: 'Kits',
    most: (most) => `de ${most}`,
    cost: 'Cuesta',
    costs: (money) => `cuesta ${money}`,
    price: 'Se vende a',
    none: 'Todavía ningún kit',
    empty: 'Escribe un rollo de tela estampada y uno de trasera, y aquí verás los kits.',
    noneOf: 'Con estos rollos no sale ningún kit entero.',
    limited: (by) => {
      if (by.length === 0) return '';
      const wanted = new Intl.ListFormat('es').format(by.map((one) => limits[one]));
      return `Para un kit más hace falta ${wanted}.`;
    },
    group: (count) => many(count, 'kit', 'kits'),
    squares: (count, name) => `${count} ${name}`,
    others: (count, role) =>
      `En cada uno, ${many(count, 'cuadrado', 'cuadrados')} de ${parts[role]}.`,
    drawing: (squares) => `Los cuadrados de un kit, estampado por estampado: ${squares}.`,
    grid: (columns, rows, cut) =>
      `Cada uno es una colcha de ${columns} por ${rows} bloques, corte ${cut}.`,
  },
  cutting: {
    title: 'Cortar los rollos',
    columns: ['Rollo', 'Tiras', 'Piezas', 'Gasta', 'Sobra'],
    how: (cut) =>
      `Tiras de ${cut} a lo ancho del rollo y luego cuadrados. Los números cuentan las tiras; un cuadrado blanco no va en ningún kit.`,
    over: (count) => `y ${many(count, 'pieza', 'piezas')}`,
    drawing: (name, strips, across) =>
      `${name}: ${many(strips, 'tira', 'tiras')} de ${many(across, 'cuadrado', 'cuadrados')}, a escala.`,
    untouched: 'sin cortar',
  },
  buy: {
    title: (kits) => `Para ${many(kits, 'kit', 'kits')}, compra además`,
    line: (amount, name, squares) =>
      `${amount} de ${name}, para ${many(squares, 'cuadrado', 'cuadrados')}.`,
    cloths: { top: 'otro estampado', middle: 'relleno', backing: 'trasera' },
  },
  sheet: {
    title: 'Un kit en el estante',
    rows: {
      materials: 'Tela',
      labour: 'Mano de obra',
      packaging: 'Embalaje',
      overhead: 'Gastos generales',
      cost: 'Coste',
      price: 'Precio',
      marginPercent: 'Margen',
    },
    noMoney: 'Pon un coste a cada rollo y aquí verás el dinero.',
    weight: 'Peso',
    content: 'Fibras',
    care: 'Cuidados',
  },
  cautions: 'Antes de cortar y vender',
  assumptions: 'Lo que hemos supuesto',
  stale: 'Lo que se ve es de antes.',
  ready: (figures) => `Calculado: ${figures}.`,
};
