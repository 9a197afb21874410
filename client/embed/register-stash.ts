import { StashElement } from '../elements/stash/stash-element.ts';
import { registerElement } from './register-element.ts';

registerElement('stash', StashElement, {
  loadCore: () => import('../data/stash-on-device.ts'),
  loadCsv: () => import('../data/csv-tool.ts'),
});
