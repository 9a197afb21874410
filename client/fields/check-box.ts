import { html, nothing, type TemplateResult } from 'lit';

/** Something that is so or not. */
export interface CheckBox {
  readonly label: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
  /** The id of a text that says more. */
  readonly describedBy?: string;
}

/** A box to tick, its label as large a target as itself. */
export function checkBox({ label, isOn, onChange, describedBy }: CheckBox): TemplateResult {
  return html`<label class="check">
    <input
      type="checkbox"
      .checked=${isOn}
      aria-describedby=${describedBy ?? nothing}
      @change=${({ target }: Event) => onChange((target as HTMLInputElement).checked)}
    /><span>${label}</span>
  </label>`;
}
