import { PlanElement } from './elements/plan/plan-element.ts';

/*
 * The one file with a side effect: it registers the elements, each once, however often and in however many
 * versions a page loads it. The service, and what works plans out without it, are where this script came from.
 */
const script = document.currentScript;

if (script instanceof HTMLScriptElement) {
  const core = new URL('on-device.js', script.src);
  PlanElement.source = {
    ...PlanElement.source,
    api: core.origin,
    loadCore: () => import(core.href),
  };
}
if (customElements.get('ragbloom-plan') === undefined) {
  customElements.define('ragbloom-plan', PlanElement);
}
