import { html, nothing, type TemplateResult } from 'lit';

/** A label, a control and what is wrong with it, tied together for those who hear the page. */
export interface FieldFrame {
  /** Its own within the element; the control has it as `id`. */
  readonly id: string;
  readonly label: string;
  /** What is wrong with it and what would make it right. */
  readonly fault?: string | undefined;
}

/** Frames a control: the label above, its fault below with the id that `describeField` names. */
export function fieldView(
  { id, label, fault }: FieldFrame,
  control: TemplateResult,
): TemplateResult {
  return html`<div class="field">
    <label for=${id}>${label}</label>
    ${control}
    ${fault === undefined ? nothing : html`<p class="fault" id="${id}-fault">${fault}</p>`}
  </div>`;
}

/** What a control says of itself: whether it is at fault, and the ids of the texts that describe it. */
export function describeField({ id, fault }: FieldFrame, unit?: string) {
  const ids = [unit && `${id}-unit`, fault && `${id}-fault`].filter((name) => name);
  return { invalid: fault ? 'true' : nothing, by: ids.join(' ') || nothing };
}
