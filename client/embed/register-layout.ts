import { LayoutElement } from '../elements/layout/layout-element.ts';
import { registerElement } from './register-element.ts';

registerElement('layout', LayoutElement, { loadCore: () => import('../data/layout-on-device.ts') });
