import { html, type TemplateResult } from 'lit';
import type { PlanContext } from './plan-context.ts';

/** What is entered at a place; where only the page may set that, it can be read and says so. */
export function lockView(
  { text, isLocked }: PlanContext,
  path: string,
  body: TemplateResult,
): TemplateResult {
  if (!isLocked(path)) return body;
  return html`<fieldset class="locked" disabled>
    <legend>${text.light.locked}</legend>
    <div class="stack">${body}</div>
  </fieldset>`;
}
