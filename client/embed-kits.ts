import { KitsElement } from './elements/kits/kits-element.ts';

/*
 * Registers the element of the kits, once, however often a page loads it. The service, and what works without it, are
 * where this script came from.
 */
const script = document.currentScript;

if (script instanceof HTMLScriptElement) {
  const core = new URL('kits-on-device.js', script.src);
  const csv = new URL('csv-tool.js', script.src);
  KitsElement.source = {
    ...KitsElement.source,
    api: core.origin,
    loadCore: () => import(core.href),
    loadCsv: () => import(csv.href),
  };
}
if (customElements.get('ragbloom-kits') === undefined) {
  customElements.define('ragbloom-kits', KitsElement);
}
