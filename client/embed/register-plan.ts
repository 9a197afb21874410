import { PlanElement } from '../elements/plan/plan-element.ts';
import { registerElement } from './register-element.ts';

registerElement('plan', PlanElement, { loadCore: () => import('../data/on-device.ts') });
