import { KitsElement } from '../elements/kits/kits-element.ts';
import { registerElement } from './register-element.ts';

registerElement('kits', KitsElement, {
  loadCore: () => import('../data/kits-on-device.ts'),
  loadCsv: () => import('../data/csv-tool.ts'),
});
