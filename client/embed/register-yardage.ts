import { YardageElement } from '../elements/yardage/yardage-element.ts';
import { registerElement } from './register-element.ts';

registerElement('yardage', YardageElement, {
  loadCore: () => import('../data/yardage-on-device.ts'),
});
