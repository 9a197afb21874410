import { VERSION } from './version.ts';

/** The class of an element that can be registered. */
export interface Registrable<Source> extends CustomElementConstructor {
  /** Whom it asks, where it asks anybody. */
  source?: Source;
  /** A page of ours that it links to, where it does. */
  page?: string;
  /** That of the script that registered it. */
  version?: string;
}

/**
 * Registers an element, once, however often and in however many versions a page loads it; a second version says so in
 * the console and leaves the first in place. Where there is no page, as on a server, nothing happens.
 *
 * @param name what comes after `ragbloom-` in its tag.
 * @param element its class; the service and our pages are where this script came from.
 * @param source where it gets what is loaded only when it is needed.
 */
export function registerElement<Source extends { readonly api: string }>(
  name: string,
  element: Registrable<Source>,
  source: Partial<Source> = {},
): void {
  const registry = globalThis.customElements as CustomElementRegistry | undefined;
  if (registry === undefined) return;
  const tag = `ragbloom-${name}`;
  const known = registry.get(tag) as Registrable<Source> | undefined;
  if (known === undefined) {
    const { origin, protocol } = new URL(import.meta.url);
    const api = protocol === 'file:' ? '' : origin;
    if (element.source !== undefined) element.source = { ...element.source, api, ...source };
    if (element.page !== undefined) element.page = api + element.page;
    element.version = VERSION;
    registry.define(tag, element);
  } else if (known.version !== VERSION) {
    console.warn(`${tag} is here in version ${known.version}, so ${VERSION} is left out.`);
  }
}
