import type { CompareWords } from './source.ts';

/** What the comparison says, in Spanish. */
export const es: CompareWords = {
  title: 'Dos planes',
  plans: { a: 'Un plan', b: 'El otro plan' },
  hint: 'Pega la dirección de un plan.',
  none: 'Pega arriba las direcciones de dos planes. El que ya esté se puede duplicar.',
  noPlan:
    'Eso no es la dirección de un plan. Abre el plan, copia la dirección de su página y pégala aquí.',
  double: 'Duplicarlo',
  doublings: { long: 'El doble de largo', both: 'El doble por cada lado' },
  swap: 'Intercambiar',
  open: 'Abrir este plan',
  table: 'Cifras de los dos planes',
  figure: 'Cifra',
  difference: 'El otro frente al primero',
  figures: {
    width: 'Ancho, lavada',
    height: 'Largo, lavada',
    blocks: 'Bloques',
    cut: 'Corte de un bloque',
    top: 'Tela para la delantera',
    middle: 'Tela para el relleno',
    backing: 'Tela para la trasera',
    cloth: 'Tela en total',
    cost: 'Coste de la tela',
    thread: 'Hilo, como mucho',
    snips: 'Piquetes',
    minutes: 'Trabajo',
    weight: 'Peso, seca',
  },
  more: (by) => `${by} más`,
  less: (by) => `${by} menos`,
  same: 'igual',
  drawing: (name, size) => `${name} a escala, ${size} tras el lavado.`,
  scale: 'Los dos están dibujados a la misma escala.',
  ready: (one, other) => `Comparados: ${one} y ${other}.`,
};
