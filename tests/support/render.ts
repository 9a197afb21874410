import { type RenderOptions, render } from 'lit';

/** Renders a template into a fresh element of the page, which the next one replaces. */
export function renderFresh(template: unknown, options?: RenderOptions): HTMLElement {
  const root = document.createElement('div');
  document.body.replaceChildren(root);
  render(template, root, options);
  return root;
}

/** The one element that a selector finds; a test that finds none fails here. */
export function find<Found extends Element = HTMLElement>(
  root: ParentNode,
  selector: string,
): Found {
  const found = root.querySelector<Found>(selector);
  if (found === null) throw new Error(`There is no ${selector}.`);
  return found;
}

/** Types into a field as a person would: the whole text at once, told by an input event. */
export function type(root: ParentNode, selector: string, text: string): void {
  const input = find<HTMLInputElement>(root, selector);
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
}

/** The text of an element with its white space collapsed. */
export function readText(root: ParentNode, selector: string): string {
  return (find(root, selector).textContent ?? '').replace(/\s+/g, ' ').trim();
}
