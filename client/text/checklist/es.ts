import type { ChecklistWords } from './source.ts';

/** Lo que dice la lista del trabajo además de sus pasos, en español. */
export const es: ChecklistWords = {
  title: 'El trabajo',
  done: (done, all) => `${done} de ${all} hechos`,
  left: (time) => `quedan unos ${time}`,
  row: (name) => `Fila ${name}`,
  focus: 'Paso a paso',
  handOut: 'Hoja para un curso',
  missing: 'No se ha podido traer esa parte. Inténtalo otra vez cuando tengas conexión.',
};
