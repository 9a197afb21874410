import { html, type TemplateResult } from 'lit';
import { type FieldFrame, fieldView } from './field-view.ts';
import { fractionPlace, offerFractions } from './fraction-place.ts';

/** One entry for a figure. */
export interface NumberField extends FieldFrame {
  /** What stands in it: never changed behind the person's back. */
  readonly value: string;
  readonly unit?: string | undefined;
  /** What would stand there if nothing is typed. */
  readonly placeholder?: string | undefined;
  /** What to call the chips for eighths; without it there are none. */
  readonly fractions?: string | undefined;
  /** It can be read and copied but not changed; `reason` says why. */
  readonly isLocked?: boolean;
  readonly reason?: string | undefined;
  /** It counts for nothing as things stand. */
  readonly isDisabled?: boolean;
  readonly onInput: (text: string) => void;
}

/**
 * A text field that brings up the figures of a phone's keyboard: `type=number` would throw away `8 1/2`
 * and `21,5` unseen. Its unit, its fault and why it cannot be changed are tied to it for those who hear the page;
 * while it is touched, chips offer the eighths that such a keyboard lacks.
 */
export function numberField(field: NumberField): TemplateResult {
  const { unit, value, placeholder = '', onInput, fractions } = field;
  const { isLocked = false, isDisabled = false, reason } = field;
  const hasChips = fractions && !isLocked && !isDisabled;
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
          ?readonly=${isLocked}
          ?disabled=${isDisabled}
          aria-invalid=${invalid}
          aria-describedby=${isLocked && reason ? `${by} ${id}-reason` : by}
          @focus=${offerFractions}
          @input=${({ target }: InputEvent) => onInput((target as HTMLInputElement).value)}
        />
        ${unit && html`<small class="unit" id="${id}-unit">${unit}</small>`}
      </span>
      ${isLocked && reason ? html`<small id="${id}-reason">${reason}</small>` : ''}
      ${hasChips ? fractionPlace(id, fractions) : ''}`,
  );
}
