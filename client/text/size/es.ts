import { es as shared } from '../shared/es.ts';
import type { SizeWords } from './source.ts';

/** Lo que dice el tamaño además de lo que dicen todos los elementos pequeños, en español. */
export const es: SizeWords = {
  title: '¿De qué tamaño la quieres?',
  kind: 'Tamaño',
  kinds: { own: 'Mi propio tamaño', bed: 'Mi propio colchón', grid: 'Tantos bloques' },
  size: (name) => shared.size(name),
  entries: {
    width: 'Ancho, lavada',
    height: 'Largo, lavada',
    'bed.width': 'Ancho del colchón',
    'bed.length': 'Largo del colchón',
    columns: 'Bloques a lo ancho',
    rows: 'Bloques a lo largo',
  },
  blocks: 'Bloques',
  cut: (length) => `corte ${length}`,
  washed: 'Lavada',
  sewn: (size) => `cosida ${size}`,
  fit: (difference) => `Respecto a tu deseo: ${difference}.`,
  wider: (by) => `${by} más ancha`,
  narrower: (by) => `${by} más estrecha`,
  longer: (by) => `${by} más larga`,
  shorter: (by) => `${by} más corta`,
  same: 'igual',
  cloth: 'Tela que comprar',
  lacking: (squares) => `No hay bastante a la venta. Cuadrados que faltan: ${squares}`,
  cost: 'Coste de la tela',
  work: 'Trabajo',
  whole: 'El plan entero',
  drawing: (across, down) => `Los bloques a escala: ${across} a lo ancho, ${down} a lo largo.`,
  ready: (across, down, size) => `${across} por ${down} bloques, lavada ${size}.`,
};
