import { html, type TemplateResult } from 'lit';

/** A few choices of which one is taken. */
export interface ChoiceChips<Value extends string> {
  /** Its own within the element. */
  readonly name: string;
  readonly legend: string;
  readonly choices: readonly (readonly [value: Value, label: string])[];
  /** Undefined where none of them is taken. */
  readonly chosen: Value | undefined;
  readonly onChoose: (value: Value) => void;
  /** The legend is for those who hear the page only. */
  readonly quiet?: boolean;
}

/** Radio buttons that look like cut patches: one tab stop, arrows within, as people know them. */
export function choiceChips<Value extends string>(field: ChoiceChips<Value>): TemplateResult {
  return html`<fieldset>
    <legend class=${field.quiet ? 'hidden' : ''}>${field.legend}</legend>
    <div class="chips">
      ${field.choices.map(
        ([value, label]) => html`<label class="chip">
          <input
            type="radio"
            name=${field.name}
            .checked=${value === field.chosen}
            @change=${() => field.onChoose(value)}
          />${label}
        </label>`,
      )}
    </div>
  </fieldset>`;
}
