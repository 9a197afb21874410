import { html, type TemplateResult } from 'lit';
import { type FieldFrame, fieldView } from './field-view.ts';
import { fractionChips } from './fraction-chips.ts';
import { setFraction } from './set-fraction.ts';

/** One entry for a figure. */
export interface NumberField extends FieldFrame {
  /** What stands in it: never changed behind the person's back. */
  readonly value: string;
  readonly unit?: string | undefined;
  /** What would stand there if nothing is typed. */
  readonly placeholder?: string | undefined;
  /** What to call the chips for eighths; without it there are none. */
  readonly fractions?: string | undefined;
  readonly onInput: (text: string) => void;
}

/**
 * A text field that brings up the figures of a phone's keyboard: `type=number` would throw away `8 1/2`
 * and `21,5` unseen. Its unit and its fault are tied to it for those who hear the page; while it is touched,
 * chips offer the eighths that such a keyboard lacks.
 */
export function numberField(field: NumberField): TemplateResult {
  const { unit, value, placeholder = '', onInput, fractions } = field;
  return fieldView(
    field,
    ({ id, invalid, by }) => html`<span class="entry">
        <input
          id=${id}
          type="text"
          inputmode="decimal"
          autocomplete="off"
          placeholder=${placeholder}
          .value=${value}
          aria-invalid=${invalid}
          aria-describedby=${by}
          @input=${({ target }: InputEvent) => onInput((target as HTMLInputElement).value)}
        />
        ${unit && html`<small class="unit" id="${id}-unit">${unit}</small>`}
      </span>
      ${fractions && fractionChips(fractions, (sign) => onInput(setFraction(value || placeholder, sign)))}`,
  );
}
