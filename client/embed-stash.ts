import { StashElement } from './elements/stash/stash-element.ts';

/*
 * Registers the element of the stash, once, however often a page loads it. The service, and what works without it, are
 * where this script came from.
 */
const script = document.currentScript;

if (script instanceof HTMLScriptElement) {
  const core = new URL('stash-on-device.js', script.src);
  const csv = new URL('csv-tool.js', script.src);
  StashElement.source = {
    ...StashElement.source,
    api: core.origin,
    loadCore: () => import(core.href),
    loadCsv: () => import(csv.href),
  };
}
if (customElements.get('ragbloom-stash') === undefined) {
  customElements.define('ragbloom-stash', StashElement);
}
