import type { FabricName, Role } from '#core/contract.ts';
import { es as shared } from '../shared/es.ts';
import type { LightWords } from './source.ts';

/** Lo que dicen por igual los elementos pequeños para páginas ajenas, en español. */
export const es: LightWords = {
  language: 'es',
  wrong: 'Eso no vale. Escríbelo como 21,5 u 8 1/2 in.',
  severities: shared.severities,
  fabric: (name: FabricName) => shared.fabric(name),
  role: (name: Role) => shared.role(name),
  unitQuestion: shared.unitQuestion,
  fractions: shared.fractions,
  locked: 'Lo fija esta página',
  host: 'Parte de lo que pedía esta página no vale:',
  trouble: {
    silent: 'No hay conexión con el planificador.',
    busy: 'El planificador tiene demasiado trabajo. Espera un minuto.',
    broken: 'Algo ha fallado en el planificador.',
    strange: 'El planificador ha respondido de un modo que esta página no conoce.',
  },
  stale: 'Las cifras que se ven son las de antes.',
  retry: shared.retry,
  device: shared.device,
};
