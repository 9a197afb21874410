import { makeCount } from '../make-count.ts';
import type { MakingWords } from './source.ts';

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

/** Lo que dice el plan sobre de qué se hace la colcha y qué hace falta, en español. */
export const es: MakingWords = {
  language: 'es',
  machines: {
    household: 'cabe en una lavadora de casa',
    large: 'pide una lavadora grande',
    laundry: 'pide las máquinas de una lavandería',
  },
  section: (name) => sections[name] ?? name,
  edges: {
    cut: 'O una medida tuya',
    seam: 'Margen de costura',
    snipDepth: 'Largo de los piquetes',
    snipPitch: 'Entre piquetes',
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
  notes: {
    cautions: 'Antes de empezar',
    assumptions: 'Lo que hemos supuesto',
    why: 'Cómo sale cada cifra',
  },
  ways: {
    title: 'Seguir con este plan',
    counter: 'Al mostrador de corte',
    compare: 'Compararlo',
    layout: 'Mover los bloques',
  },
};
