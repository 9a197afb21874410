import { makeCount } from '../make-count.ts';
import type { PlanWords } from './source.ts';

const count = makeCount('es');

const sections: Readonly<Record<string, string>> = {
  bulk: 'Grosor',
  class: 'Curso',
  fabrics: 'Tela',
  fringe: 'Flecos',
  grid: 'Bloques',
  mismatch: 'Extremos de las filas',
  size: 'Tamaño',
  steps: 'Pasos',
  thread: 'Hilo',
  time: 'Tiempo',
  weight: 'Peso',
  wish: 'Deseo',
  work: 'Trabajo',
};

/** Lo que dice el plan además de lo que dicen todos los elementos, en español. */
export const es: PlanWords = {
  language: 'es',
  machines: {
    household: 'cabe en una lavadora de casa',
    large: 'pide una lavadora grande',
    laundry: 'pide las máquinas de una lavandería',
  },
  section: (name) => sections[name] ?? name,
  kinds: { own: 'Mi propio tamaño', bed: 'Mi propio colchón', grid: 'Tantos bloques' },
  states: { sewn: 'Cosida', washed: 'Lavada' },
  side: (name, state) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Ancho',
    height: 'Largo',
    'bed.width': 'Ancho del colchón',
    'bed.length': 'Largo del colchón',
    'bed.drop': 'Caída a los lados',
    'bed.footDrop': 'Caída a los pies',
    columns: 'Bloques a lo ancho',
    rows: 'Bloques a lo largo',
    cut: 'O una medida tuya',
    seam: 'Margen de costura',
    snipDepth: 'Largo de los piquetes',
    snipPitch: 'Entre piquetes',
  },
  wish: {
    title: 'Tu deseo',
    label: 'Con tus palabras',
    example: 'una manta, 100 x 130 cm',
    go: 'Planear',
    kind: 'Tamaño',
    region: 'Región',
    blocks: (columns, rows) => `${columns} × ${rows} bloques`,
    at: 'Este tamaño es el de la colcha',
    read: (what) => `Leído como ${what}. Los bloques y la tela se eligen abajo.`,
  },
  blocks: {
    title: 'Bloques',
    cut: 'Cuadrados de',
    choose: 'Lo que mejor encaje',
    more: 'Costura y piquetes',
    explain:
      'El margen de costura queda de pie por delante. Con los piquetes y el lavado se vuelve flecos.',
  },
  cloth: {
    title: 'Tela',
    prints: 'Estampados',
    fewer: 'Un estampado menos',
    more: 'Un estampado más',
    none: 'Ninguno',
    bolts: 'Rollos y prelavado',
    width: (role) => `${role}, ancho del rollo`,
    prewashed: (role) => `${role}: se lava antes de cortar`,
    turned: 'Girar uno de cada dos bloques, para que encoja igual en los dos sentidos',
  },
  plan: 'Tu plan',
  drawing: (across, down, size) =>
    `La colcha a escala: ${across} bloques a lo ancho, ${down} a lo largo, ${size}.`,
  figures: { blocks: 'Bloques', each: 'corte', cloth: 'Tela', work: 'Trabajo' },
  fit: {
    width: ['más ancha que tu deseo', 'más estrecha que tu deseo', 'Tan ancha como deseas'],
    height: ['más larga', 'más corta', 'tan larga como deseas'],
  },
  between: (from, to) => `Según la tela, de ${from} a ${to}.`,
  shopping: {
    title: 'Comprar y cortar',
    columns: ['Tela', 'Compra', 'Tiras', 'Piezas'],
    each: (squares) => `× ${squares}`,
    idle: (prints) =>
      `No queda ningún bloque para ${count(prints, 'estampado', 'estampados')}. Elige menos.`,
    how: (cut) =>
      `Corta tiras de ${cut} de alto a lo ancho del rollo, y de cada una sus cuadrados. Los de reserva van incluidos.`,
    thread: 'Hilo',
    threadText: (amount, bobbins, saved) =>
      `Como mucho unos ${amount}, la mitad en ${count(bobbins, 'canilla', 'canillas')}. Coser en cadena ahorra ${saved}.`,
  },
  facts: {
    title: 'Qué esperar',
    work: 'Trabajo',
    workText: (hours, snips) =>
      `Unas ${hours} en la mesa${snips && `, ${snips} de ellas haciendo piquetes`}.`,
    weight: 'Peso',
    weightText: (dry, wet, machine) => `${dry} seca, ${wet} mojada: ${machine}.`,
    rows: 'Extremos de las filas',
    rowsText: (ease, middle, end) =>
      `Unidas desde el centro, ${middle} de cada 100 coinciden en menos de ${ease}; desde un extremo, ${end}.`,
    shrink: 'Encoge',
    shrinkText: (across, down) => `${across} a lo ancho, ${down} a lo largo.`,
  },
  others: 'Otros planes que encajan',
  moreOthers: 'Más',
  notes: {
    cautions: 'Antes de empezar',
    assumptions: 'Lo que hemos supuesto',
    why: 'Cómo sale cada cifra',
  },
  stale: 'El plan que se ve es el de antes.',
  ready: (across, down, figures) => `Planeado: ${across} por ${down} bloques, ${figures}.`,
};
