import { WashElement } from './elements/wash/wash-element.ts';

/*
 * Registers the element of the wash, once, however often a page loads it. The service, and what works without it, are
 * where this script came from.
 */
const script = document.currentScript;

if (script instanceof HTMLScriptElement) {
  const core = new URL('wash-on-device.js', script.src);
  WashElement.source = {
    ...WashElement.source,
    api: core.origin,
    loadCore: () => import(core.href),
  };
}
if (customElements.get('ragbloom-wash') === undefined) {
  customElements.define('ragbloom-wash', WashElement);
}
