import type { PlanWords } from './source.ts';

/** Lo que dice el plan además de lo que dicen todos los elementos, en español. */
export const es: PlanWords = {
  language: 'es',
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
    passed: (words) => `Sin entender: ${words}.`,
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
  others: 'Otros planes que encajan',
  moreOthers: 'Más',
  stale: 'El plan que se ve es el de antes.',
  ready: (across, down, figures) => `Planeado: ${across} por ${down} bloques, ${figures}.`,
};
