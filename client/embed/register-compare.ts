import { CompareElement } from '../elements/compare/compare-element.ts';
import { registerElement } from './register-element.ts';

registerElement('compare', CompareElement, { loadCore: () => import('../data/on-device.ts') });
