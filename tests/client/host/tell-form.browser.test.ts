import { expect, test } from 'vitest';
import { tellForm } from '../../../client/host/tell-form.ts';

class Control extends HTMLElement {
  static formAssociated = true;
  readonly internals = this.attachInternals();
}

test('tellForm sends a value, or none, and says what is wrong', () => {
  customElements.define('x-told', Control);
  const control = new Control();
  control.setAttribute('name', 'told');
  const form = document.createElement('form');
  form.append(control);
  document.body.replaceChildren(form);
  const facts = { draft: 'a=1', anchor: undefined };
  tellForm(control.internals, { ...facts, value: 'a=1', message: '' });
  expect([...new FormData(form)]).toEqual([['told', 'a=1']]);
  expect(control.internals.validity.valid).toBe(true);
  tellForm(control.internals, { ...facts, value: undefined, message: 'Type a number.' });
  expect([...new FormData(form)]).toEqual([]);
  expect(control.internals.validity.customError).toBe(true);
  expect(control.internals.validationMessage).toBe('Type a number.');
  tellForm(control.internals, { ...facts, value: '', message: '' });
  expect(form.checkValidity()).toBe(true);
});
