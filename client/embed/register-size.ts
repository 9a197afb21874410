import { SizeElement } from '../elements/size/size-element.ts';
import { registerElement } from './register-element.ts';

registerElement('size', SizeElement, { loadCore: () => import('../data/on-device.ts') });
