import { html, type TemplateResult } from 'lit';

/**
 * What is entered at a place; where only the page may set that, it can be read and says so.
 *
 * @param reason why it cannot be changed; `false` where it can.
 */
export function lockView(reason: string | false, body: TemplateResult): TemplateResult {
  if (reason === false) return body;
  return html`<fieldset class="locked" disabled>
    <legend>${reason}</legend>
    <div class="stack">${body}</div>
  </fieldset>`;
}
