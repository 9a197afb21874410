import { WashElement } from '../elements/wash/wash-element.ts';
import { registerElement } from './register-element.ts';

registerElement('wash', WashElement, { loadCore: () => import('../data/wash-on-device.ts') });
