/*
 * Glossar: du, warm und knapp. block Block, layer Lage, top Oberseite, middle Zwischenlage, backing Rückseite,
 * seam Naht, seam allowance Nahtzugabe, stitching Nahtlinie, snip Einschnitt (einschneiden), fringe Fransen,
 * bolt Ballen, strip Streifen, selvage Webkante, print Muster, batting Vlies, thread Garn, bobbin Spule,
 * swatch Probe, test block Probeblock, shrink einlaufen, prewash vorwaschen, kit Nähpackung, stash Stoffvorrat,
 * cut size Zuschnitt, cot Babybett, throw Kuscheldecke.
 */
import { de as base } from '../base/de.ts';
import { de as faults } from '../faults/de.ts';
import type { SharedWords } from './source.ts';

/** Was jedes Element sagt, auf Deutsch. */
export const de: SharedWords = { ...base, faults };
