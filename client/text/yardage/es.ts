import type { YardageWords } from './source.ts';

/** Lo que dice el metraje además de lo que dicen todos los elementos pequeños, en español. */
export const es: YardageWords = {
  title: '¿Cuánta tela?',
  width: 'Ancho del rollo',
  selvage: 'Orillo, por cada lado',
  left: 'Lo que queda en el rollo',
  unknown: 'no se sabe',
  pieces: 'Piezas que cortar',
  across: (name) => `${name}, a lo ancho`,
  along: (name) => `${name}, a lo largo`,
  count: (name) => `${name}, cuántas`,
  size: (name, size, pieces) => `${name}: ${pieces} de ${size}`,
  add: 'Otra medida',
  remove: (name) => `Dejar fuera ${name}`,
  buy: 'Comprar',
  cutInto: (length) => `De ahí se cortan ${length}`,
  enough: 'Lo que queda en el rollo alcanza.',
  short: 'Lo que queda en el rollo no alcanza. Da para:',
  strips: 'Cortado en tiras a lo ancho',
  strip: (strips, height) => `${strips} × ${height} de alto`,
  turned: 'girada',
  rest: (width) => `sobran ${width}`,
  cost: 'Coste de la tela',
  drawn: 'Los cortes a escala',
  drawing: (strip) => `Una tira: ${strip}.`,
  ready: (amount) => `Compra ${amount}.`,
};
