import { makeCount } from '../make-count.ts';
import type { ClothWords } from './source.ts';

const count = makeCount('es');

/** Lo que dicen las tablas de tela, en cualquier página, en español. */
export const es: ClothWords = {
  language: 'es',
  columns: {
    role: 'Para',
    id: 'Nombre',
    print: 'Estampado',
    width: 'Ancho',
    length: 'Largo',
    count: 'Piezas',
    cost: 'Coste',
  },
  cell: (row, column) => `Fila ${row}, ${column.toLowerCase()}`,
  remove: (name) => `Quitar ${name}`,
  row: (row) => `fila ${row}`,
  prints: 'Varias piezas llevan un mismo estampado',
  printsHint: 'Pon la misma palabra en «Estampado» a las piezas que lo comparten.',
  paste:
    'Pega en cualquier celda lo copiado de una hoja de cálculo. Un archivo tiene una columna para cada uno de',
  roles: { top: 'Delante', middle: 'Medio', backing: 'Detrás' },
  noNames: 'Ponle un nombre propio.',
  noRole: 'Elige delante, medio o detrás.',
  open: 'Abrir CSV',
  save: 'Guardar CSV',
  clear: 'Empezar con una tabla vacía',
  clearInvented: 'empieza con una tabla vacía',
  undo: 'Recuperar lo que había',
  opened: (rows) => `${count(rows, 'fila leída', 'filas leídas')} del archivo.`,
  pasted: (rows) => `${count(rows, 'fila pegada', 'filas pegadas')}.`,
  cleared: 'La tabla está vacía.',
  invented: 'Esta tela es de una tienda que no existe. Escribe encima, o',
  file: {
    'empty-file': () =>
      'En ese archivo no hay tela. La primera fila nombra las columnas; las demás, una tela cada una.',
    'no-column': ({ column = '' }) =>
      `La fila 1 no nombra ninguna columna «${column}». Pon esa palabra encima de la columna y abre otra vez el archivo.`,
    'stray-quote': ({ row = 0 }) =>
      `En la fila ${row} hay unas comillas fuera de sitio. Pon la celda entre comillas y escribe dobles las de dentro.`,
    'too-many-rows': ({ row = 0, most = 0 }) =>
      `En la tabla caben ${most} filas, y la fila ${row} ya sobra. No se ha pasado nada; divide la lista.`,
    unreadable: () => 'Ese archivo no se puede leer. Guárdalo como CSV y ábrelo otra vez.',
  },
  kept: 'Lo que has escrito se queda como está.',
  cuts: {
    across: (width) => `${width} a lo ancho`,
    wanted: (pieces) => `${pieces} necesarios`,
    turned: 'a trazos: con un cuarto de vuelta',
    alike: (sheets) => `${sheets} iguales`,
  },
};
