import { html, type TemplateResult } from 'lit';
import { type FieldFrame, fieldView } from './field-view.ts';

/** Many choices of which one is taken. */
export interface ChoiceList<Value extends string> extends FieldFrame {
  readonly choices: readonly (readonly [value: Value, label: string])[];
  readonly chosen: Value;
  readonly onChoose: (value: Value) => void;
}

/** The browser's own list to choose from, with its label and its fault. */
export function choiceList<Value extends string>(field: ChoiceList<Value>): TemplateResult {
  const choose = ({ target }: Event) => {
    const chosen = field.choices[(target as HTMLSelectElement).selectedIndex];
    if (chosen !== undefined) field.onChoose(chosen[0]);
  };
  return fieldView(
    field,
    ({ id, invalid, by }) => html`<select
      id=${id}
      aria-invalid=${invalid}
      aria-describedby=${by}
      @change=${choose}
    >
      ${field.choices.map(
        ([value, label]) => html`<option .selected=${value === field.chosen}>${label}</option>`,
      )}
    </select>`,
  );
}
