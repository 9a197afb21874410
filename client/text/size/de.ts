import { de as shared } from '../shared/de.ts';
import type { SizeWords } from './source.ts';

/** Was die Größe außer dem sagt, was alle kleinen Elemente sagen, auf Deutsch. */
export const de: SizeWords = {
  title: 'Wie groß soll er werden?',
  kind: 'Größe',
  kinds: { own: 'Eigene Größe', bed: 'Eigene Matratze', grid: 'So viele Blöcke' },
  size: (name) => shared.size(name),
  entries: {
    width: 'Breite, gewaschen',
    height: 'Länge, gewaschen',
    'bed.width': 'Matratze, Breite',
    'bed.length': 'Matratze, Länge',
    columns: 'Blöcke quer',
    rows: 'Blöcke längs',
  },
  blocks: 'Blöcke',
  cut: (length) => `Zuschnitt ${length}`,
  washed: 'Gewaschen',
  sewn: (size) => `genäht ${size}`,
  fit: (difference) => `Gegenüber deinem Wunsch: ${difference}.`,
  wider: (by) => `${by} breiter`,
  narrower: (by) => `${by} schmaler`,
  longer: (by) => `${by} länger`,
  shorter: (by) => `${by} kürzer`,
  same: 'genau so groß',
  cloth: 'Stoff, den du kaufst',
  lacking: (squares) => `Davon gibt es nicht genug. Es fehlen Quadrate: ${squares}`,
  cost: 'Kosten des Stoffs',
  work: 'Arbeit',
  whole: 'Der ganze Plan',
  drawing: (across, down) => `Die Blöcke im Maßstab: ${across} quer, ${down} längs.`,
  ready: (across, down, size) => `${across} mal ${down} Blöcke, gewaschen ${size}.`,
};
