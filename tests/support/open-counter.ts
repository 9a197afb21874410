import { CounterElement } from '../../client/elements/counter/counter-element.ts';

/** Puts a counter into the page, as its tag with these attributes says, and waits until it has words and an answer. */
export async function openCounter(attributes: string): Promise<CounterElement> {
  if (customElements.get('ragbloom-counter') === undefined) {
    customElements.define('ragbloom-counter', CounterElement);
  }
  document.body.innerHTML = `<ragbloom-counter ${attributes}>At the counter</ragbloom-counter>`;
  const counter = document.body.firstElementChild as CounterElement;
  await settleCounter(counter);
  return counter;
}

/** Waits until what was typed or pressed shows, and what is fetched for it too. */
export async function settleCounter(counter: CounterElement): Promise<void> {
  for (let turn = 0; turn < 4; turn += 1) {
    await counter.updateComplete;
    await new Promise((done) => setTimeout(done, 0));
  }
}

/** What stands inside a counter. */
export function insideCounter(counter: CounterElement): ShadowRoot {
  if (counter.shadowRoot === null) throw new Error('The counter has nothing inside.');
  return counter.shadowRoot;
}
