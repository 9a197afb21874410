import type { FabricName, Role, SizeName } from '#core/contract.ts';
import type { BaseWords } from './source.ts';

const fabrics: Readonly<Record<FabricName, string>> = {
  'quilting-cotton': 'Algodón de patchwork',
  flannel: 'Franela',
  denim: 'Tela vaquera',
  'linen-cotton': 'Lino y algodón',
  plush: 'Felpa',
  fleece: 'Forro polar',
  'cotton-batting': 'Guata de algodón',
  'blend-batting': 'Guata mixta',
  'bamboo-batting': 'Guata de bambú',
  'polyester-batting': 'Guata de poliéster',
};

const roles: Readonly<Record<Role, string>> = {
  top: 'Delantera',
  middle: 'Relleno',
  backing: 'Trasera',
};

const sizes: Readonly<Record<SizeName, string>> = {
  cot: 'Cuna',
  lap: 'Manta de regazo',
  throw: 'Manta de sofá',
  twin: 'Twin (EE. UU.)',
  single: 'Cama individual',
  full: 'Full (EE. UU.)',
  double: 'Cama doble',
  queen: 'Queen',
  king: 'King',
  'california-king': 'California King',
  'super-king': 'Super King',
};

/** Lo que dice cada elemento, en español. */
export const es: BaseWords = {
  language: 'es',
  fabric: (name) => fabrics[name],
  role: (name) => roles[name],
  size: (name) => sizes[name],
  severities: { danger: 'Peligro', care: 'Cuidado', note: 'Conviene saber' },
  fractions: 'Fracciones',
  unitQuestion: 'Medir en',
  device:
    'El planificador no ha respondido, así que lo ha calculado tu dispositivo. Las cifras son las mismas.',
  unreachable: 'No se puede llegar al planificador.',
  retry: 'Intentarlo otra vez',
  host: 'Parte de lo que se pedía no se ha podido leer:',
  print: 'Imprimir',
};
