/*
 * Glosario: tú, cercano y breve. block bloque, layer capa, top delantera, middle relleno, backing trasera,
 * seam costura, seam allowance margen de costura, stitching pespunte, snip piquete, fringe flecos, bolt rollo,
 * strip tira, selvage orillo, print estampado, batting guata, thread hilo, bobbin canilla, swatch muestra,
 * test block bloque de prueba, shrink encoger, prewash prelavar, kit kit, stash retales, cut size corte,
 * cot cuna, throw manta de sofá.
 */
import { es as base } from '../base/es.ts';
import { es as faults } from '../faults/es.ts';
import type { SharedWords } from './source.ts';

/** Lo que dice cada elemento, en español. */
export const es: SharedWords = { ...base, faults };
