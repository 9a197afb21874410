/*
 * Glossaire : vous, simple et chaleureux. block bloc, layer épaisseur, top dessus, middle milieu, backing dos,
 * seam couture, seam allowance marge de couture, stitching piqûre, snip cran, fringe franges, bolt rouleau,
 * strip bande, selvage lisière, print imprimé, batting molleton, thread fil, bobbin canette, swatch échantillon,
 * test block bloc d’essai, shrink rétrécir, prewash prélaver, kit kit, stash réserve de tissus, cut size coupe,
 * cot lit de bébé, throw plaid.
 */
import { fr as base } from '../base/fr.ts';
import { fr as faults } from '../faults/fr.ts';
import type { SharedWords } from './source.ts';

/** Ce que dit chaque élément, en français. */
export const fr: SharedWords = { ...base, faults };
