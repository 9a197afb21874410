import type { FabricName, Role } from '#core/contract.ts';
import { de as shared } from '../shared/de.ts';
import type { LightWords } from './source.ts';

/** Was die kleinen Elemente für die Seiten anderer gemeinsam sagen, auf Deutsch. */
export const de: LightWords = {
  language: 'de',
  wrong: 'Das geht nicht. Schreib es wie 21,5 oder 8 1/2 in.',
  severities: shared.severities,
  fabric: (name: FabricName) => shared.fabric(name),
  role: (name: Role) => shared.role(name),
  unitQuestion: shared.unitQuestion,
  fractions: shared.fractions,
  locked: 'Von dieser Seite festgelegt',
  host: 'Manches von dem, was diese Seite verlangt hat, geht nicht:',
  trouble: {
    silent: 'Es gibt keine Verbindung zum Planer.',
    busy: 'Der Planer hat zu viel zu tun. Warte eine Minute.',
    broken: 'Beim Planer ist etwas schiefgegangen.',
    strange: 'Der Planer hat so geantwortet, dass diese Seite es nicht versteht.',
  },
  stale: 'Zu sehen sind noch die Zahlen von vorher.',
  retry: shared.retry,
  device: shared.device,
};
