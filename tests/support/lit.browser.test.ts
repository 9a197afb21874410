import { html, LitElement } from 'lit';
import { expect, test } from 'vitest';

class Greeting extends LitElement {
  static override properties = { name: {} };
  declare name: string;
  override render() {
    return html`<p>Hello, ${this.name}</p>`;
  }
}

test('a Lit element renders its property into its shadow root', async () => {
  customElements.define('x-greeting', Greeting);
  const element = new Greeting();
  element.name = 'Ada';
  document.body.append(element);
  await element.updateComplete;
  expect(element.shadowRoot?.querySelector('p')?.textContent).toBe('Hello, Ada');
});
