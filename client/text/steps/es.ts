import { makeCount } from '../make-count.ts';
import type { StepWords } from './en.ts';
import { readFigures, type StepFigures } from './read-figures.ts';
import type { StepsWords } from './source.ts';

const count = makeCount('es');
const list = new Intl.ListFormat('es');
const { format } = new Intl.NumberFormat('es');

const bobbins = ({ number }: StepFigures) =>
  number('bobbins') > 0
    ? ` La canilla se acaba ${count(number('bobbins'), 'vez', 'veces')} en este paso.`
    : '';

const chain = ({ number }: StepFigures) =>
  number('links') > 0
    ? 'Pasa un bloque tras otro sin cortar el hilo.'
    : 'Corta el hilo después de cada bloque.';

const often = (within: number) =>
  within > 99 ? 'casi todos' : `unos ${Math.round(within)} de cada 100`;

const ends = ({ number, length, above }: StepFigures) => {
  const expected =
    number('most') > 0
      ? ` La mitad de los extremos se desvía menos de ${above('half')}, 95 de cada 100 menos de ${above('most')}; desde un extremo serían ${above('mostFromOneEnd')}.`
      : '';
  if (number('ease') <= 0) return `${expected} Descose lo que no coincida.`;
  return `${expected} Coinciden en menos de ${length('ease')} ${often(number('within'))}, y eso se va con el lavado. Descose lo que se desvíe más.`;
};

const steps: Readonly<Record<string, (figures: StepFigures) => StepWords>> = {
  swatch: () => [
    'Coser un bloque de prueba, medirlo, lavarlo y medirlo otra vez',
    'Dice cómo encoge tu propia tela mejor que cualquier tabla.',
  ],
  prewash: ({ roles }) => [
    `Prelavar: ${list.format(roles('roles'))}`,
    'Lava y seca la tela como se lavará la colcha, y plánchala bien lisa.',
  ],
  cut: ({ number, length }) => [
    `Cortar ${count(number('pieces'), 'cuadrado', 'cuadrados')} de ${length('cut')}`,
    `Corta tiras de ${length('cut')} a lo ancho del rollo y de ellas los cuadrados. ${count(number('layers'), 'capa', 'capas')}, con los de reserva.`,
  ],
  stack: ({ number, fabrics }) => [
    `Apilar ${count(number('blocks'), 'bloque', 'bloques')} de ${count(number('layers'), 'capa', 'capas')}`,
    `De abajo arriba: ${fabrics('fabrics').join(', ')}; la de encima, con el derecho hacia arriba. Gira un poco uno de cada dos bloques de la pila, para que se separen bien.${number('prints') > 1 ? ` Haz una pila para cada uno de los ${number('prints')} estampados.` : ''}`,
  ],
  'quilt-first': (figures) => [
    'Acolchar los bloques de esquina a esquina',
    `Aguja ${figures.text('needle')}. ${chain(figures)}${bobbins(figures)}`,
  ],
  part: () => ['Separar la cadena', 'Corta los hilos que unen los bloques.'],
  'quilt-second': (figures) => [
    'Acolchar la otra diagonal',
    `Ahora cada bloque tiene su X. ${chain(figures)}${bobbins(figures)}`,
  ],
  snip: (figures) => {
    const { number, length, gap, minutes } = figures;
    const fewer = number('snips') - number('snipsJoined');
    const saved = Math.round(minutes - number('minutesJoined'));
    const later =
      number('blocks') > 1
        ? `Antes de unir es más fácil; después es la tradición: los dos márgenes a la vez, ${count(fewer, 'piquete', 'piquetes')} menos${saved > 0 ? `, unos ${count(saved, 'minuto', 'minutos')} menos` : ''}, pero cada uno con el doble de tela.`
        : 'Detén cada piquete bien antes del pespunte.';
    return [
      `Hacer los piquetes en los cuatro lados: ${count(number('snips'), 'piquete', 'piquetes')}`,
      `De ${length('depth')} de largo, cada ${length('pitch')}, a ${gap('clearance')} de la costura que vendrá. ${later}`,
    ];
  },
  layout: ({ number, text }) => [
    `Colocar ${number('columns')} por ${number('rows')} bloques y hacer una foto`,
    `Marca con un alfiler el bloque de arriba a la izquierda${number('prints') > 1 ? `, del estampado ${text('topLeft')}` : ''}. Separa los estampados iguales.`,
  ],
  join: (figures) => [
    `Unir los bloques de cada fila: ${count(figures.number('rows'), 'fila', 'filas')} de ${figures.number('columns')}`,
    `Trasera con trasera, con un margen de ${figures.length('seam')}, para que los bordes sin rematar queden de pie por delante.${bobbins(figures)}`,
  ],
  'join-rows': (figures) => {
    const { number } = figures;
    const [from, to] = [number('from'), number('to')];
    const middle = from < to ? `entre los bloques ${from} y ${to}` : `en el bloque ${from}`;
    return [
      'Unir fila con fila',
      `Empieza por el centro, ${middle}: hazlo coincidir y prende hacia los dos lados.${ends(figures)}${bobbins(figures)}`,
    ];
  },
  border: (figures) => [
    'Pespuntear todo el contorno de la colcha',
    `A ${figures.length('seam')} del borde, ${count(figures.number('passes'), 'vez', 'veces')}, ${figures.length('perimeter')} cada vuelta. Después haz piquetes en el borde que siga entero.${bobbins(figures)}`,
  ],
  trim: () => ['Cortar los hilos sueltos', 'Por delante y por detrás, antes del primer lavado.'],
  wash: ({ mass, text }) => [
    'Lavar, sacudir, secar y quitar la pelusa',
    `Mojada pesa unos ${format(mass('wet'))} ${text('unit')}. Sacúdela al aire libre entre la lavadora y la secadora. Los flecos se suavizan con cada lavado.`,
  ],
};

/** Cómo se dicen los pasos del trabajo en español. */
export const es: StepsWords = {
  language: 'es',
  say: (step, manner) =>
    (Object.hasOwn(steps, step.id) && steps[step.id]?.(readFigures(step, manner))) || [
      step.do,
      step.detail,
    ],
};
