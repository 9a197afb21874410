import type { ChecklistWords } from './source.ts';

/** Lo que dice la lista del trabajo, en español. */
export const es: ChecklistWords = {
  title: 'El trabajo',
  done: (done, all) => `${done} de ${all} hechos`,
  left: (time) => `quedan unos ${time}`,
  row: (name) => `Fila ${name}`,
  focus: 'Paso a paso',
  handOut: 'Hoja para un taller',
  missing: 'Esa parte no se ha podido traer. Prueba otra vez cuando tengas conexión.',
};
