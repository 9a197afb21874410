import { html, nothing, type TemplateResult } from 'lit';

/** A label, a control and what is wrong with it, tied together for those who hear the page. */
export interface FieldFrame {
  /** Its own within the element. */
  readonly id: string;
  readonly label: string;
  /** What is wrong with it and what would make it right. */
  readonly fault?: string | undefined;
}

/** What the control has to say of itself; a text that is not there describes nothing. */
export interface FieldTies {
  readonly id: string;
  readonly invalid: 'true' | typeof nothing;
  /** Ids of the unit and of the fault. */
  readonly by: string;
}

/** Frames a control: its label above, its fault below. */
export function fieldView(
  { id, label, fault }: FieldFrame,
  control: (ties: FieldTies) => TemplateResult,
): TemplateResult {
  return html`<div class="field">
    <label for=${id}>${label}</label>
    ${control({ id, invalid: fault ? 'true' : nothing, by: `${id}-unit ${id}-fault` })}
    ${fault && html`<p class="fault" id="${id}-fault">${fault}</p>`}
  </div>`;
}
