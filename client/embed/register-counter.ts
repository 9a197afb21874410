import { CounterElement } from '../elements/counter/counter-element.ts';
import { registerElement } from './register-element.ts';

registerElement('counter', CounterElement);
