import { html, type TemplateResult } from 'lit';

const EIGHTHS = [...'⅛¼⅜½⅝¾⅞'];

/**
 * The eighths as buttons, for the keyboards of phones that have no slash. A press leaves the focus,
 * and so the keyboard, where it is.
 *
 * @param label names the field that they act on.
 * @param onChoose receives the sign.
 */
export function fractionChips(label: string, onChoose: (sign: string) => void): TemplateResult {
  return html`<div class="fractions" role="group" aria-label=${label}>
    ${EIGHTHS.map(
      (sign) => html`<button
        @pointerdown=${(event: Event) => event.preventDefault()}
        @click=${() => onChoose(sign)}
      >${sign}</button>`,
    )}
  </div>`;
}
