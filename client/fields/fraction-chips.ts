import { html, type TemplateResult } from 'lit';

const EIGHTHS = [...'⅛¼⅜½⅝¾⅞'];

/**
 * The eighths as buttons, for the keyboards of phones that have no slash. A press leaves the focus,
 * and so the keyboard, where it is.
 *
 * @param onChoose receives the sign.
 */
export function fractionChips(onChoose: (sign: string) => void): readonly TemplateResult[] {
  return EIGHTHS.map(
    (sign) => html`<button
      @pointerdown=${(event: Event) => event.preventDefault()}
      @click=${() => onChoose(sign)}
    >${sign}</button>`,
  );
}
