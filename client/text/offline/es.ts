import type { OfflineWords } from './source.ts';

/** Lo que dicen nuestras páginas de sí mismas y de la red, en español. */
export const es: OfflineWords = {
  language: 'es',
  waiting: '',
  kept: 'Guardada en este dispositivo: se abre también sin cobertura.',
  refused: 'Este navegador no guarda páginas, así que sin cobertura esta no se abrirá.',
  silent: 'Sin cobertura. Aquí todo sigue funcionando.',
  newer: 'Guardada en este dispositivo. Una versión más nueva espera a tu próxima visita.',
};
