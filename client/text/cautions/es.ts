import type { CautionCode } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { CautionFigures, SaidCaution } from './en.ts';
import type { CautionsWords } from './source.ts';

type Say = (severity: SaidCaution['severity'], figures: CautionFigures) => string;

const count = makeCount('es');

const sentences: Readonly<Record<CautionCode, Say>> = {
  'rotary-cutter': () =>
    'Un cúter rotatorio es una cuchilla: corta hacia fuera, aparta los dedos del borde de la regla y cierra el protector cada vez que lo dejes.',
  'repetitive-snipping': (_, { snips }) =>
    `Esta colcha lleva ${snips === undefined ? 'muchos piquetes' : count(snips, 'piquete', 'piquetes')}. Usa unas tijeras afiladas que se abran solas, cambia de mano y descansa antes de que duela.`,
  'needle-at-crossings': (_, { thickness, needle }) =>
    `Donde se juntan cuatro esquinas hay ${thickness === undefined ? 'mucha tela' : `unos ${thickness} de tela`} bajo el prensatelas. Usa ${needle === undefined ? 'una aguja gruesa' : `una aguja ${needle}`}, cose despacio ahí o gira el volante a mano, y ponte gafas: las agujas se rompen.`,
  'snip-near-seam': (severity, { clearance }) => {
    const left = clearance === undefined ? 'muy poco' : clearance;
    if (severity === 'danger') {
      return `Así queda ${left} entre el piquete y el pespunte: un descuido corta la costura y la colcha se deshace al lavarla. Haz los piquetes menos hondos o cose con más margen.`;
    }
    if (severity === 'care') {
      return `Entre el piquete y el pespunte queda ${left}. Ve despacio y vuelve a coser cualquier costura que cortes.`;
    }
    return `${clearance === undefined ? '' : `Entre el piquete y el pespunte quedan ${clearance}. `}Detén cada piquete bien antes de la costura.`;
  },
  'infant-sleep': (severity) =>
    severity === 'danger'
      ? 'No es para un bebé que duerme. Hasta los doce meses, donde duerme no debe haber colchas, mantas ni otra ropa de cama suelta: un colchón firme y plano, una sábana bajera ajustada y el bebé boca arriba. Deja esta colcha para jugar en el suelo mientras lo vigilas, y para cuando crezca. Los hilos sueltos y los flecos no son para la boca de un bebé.'
      : 'Ninguna colcha debe estar donde duerme un bebé de menos de doce meses.',
  'dryer-lint': () =>
    'Los flecos recién hechos sueltan muchísima pelusa. Limpia el filtro de la secadora después de cada carga y también el de la lavadora; no uses nunca una secadora con el filtro atascado. En Estados Unidos se registraron unos 2900 incendios de secadoras en viviendas cada año de 2008 a 2010, y la primera causa fue no limpiarlas.',
  'washer-load': (_, { machine }) =>
    `Esta colcha pesa mucho para una lavadora de casa, sobre todo mojada. Llévala a ${machine === 'laundry' ? 'una lavandería con máquinas industriales' : 'una máquina grande'}, y compara su peso en seco con la carga que admite la máquina.`,
  flammability: () =>
    'La tela con pelo y con flecos prende más fácil que la lisa. Tenla lejos de llamas y estufas, y pregunta a la autoridad de tu zona antes de vender.',
  'selling-children': () =>
    'Lo que se vende para niños necesita en muchos países ensayos, un certificado y una etiqueta de trazabilidad. Pregunta a la autoridad de donde vendas.',
  'label-rules': (_, { isDraftLabel }) =>
    isDraftLabel === true
      ? 'Esta etiqueta es un borrador. Las normas sobre fibras cambian de un país a otro, y las fibras de aquí son las que suele tener una tela así: guíate por el rollo y pregunta a la autoridad de donde vendas.'
      : 'Las etiquetas de fibras y cuidados tienen normas distintas en cada país. Mira las que valen donde vendas.',
  'dye-bleed': () =>
    'La tela oscura y la roja pueden desteñir en el primer lavado. Moja un retal, apriétalo sobre tela blanca y prelava lo que manche.',
  'unmeasured-shrink': () =>
    'Parte de lo que encoge sale de una tabla de telas y no de la tuya. Acolcha y lava un bloque de prueba con tu propia tela y lo sabrás mejor.',
};

/** Cómo se dicen los avisos en español. */
export const es: CautionsWords = {
  language: 'es',
  say: ({ code, severity, text }, figures) =>
    (Object.hasOwn(sentences, code) && sentences[code as CautionCode](severity, figures)) || text,
};
