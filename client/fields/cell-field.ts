import { html, nothing, type TemplateResult } from 'lit';
import { fractionPlace, offerFractions } from './fraction-place.ts';

/** One cell of a table to type lengths into. */
export interface CellField {
  /** Its own within the element. */
  readonly id: string;
  /** What it is called by those who hear the page: the heads of its row and column together. */
  readonly label: string;
  readonly value: string;
  /** The id of the text that says what is wrong with it. */
  readonly faultId?: string | undefined;
  /** What to call the chips for eighths; without it there are none. */
  readonly fractions?: string | undefined;
  readonly onInput: (text: string) => void;
}

/** A text field without a label of its own to see: the heads of the table are its label. */
export function cellField(field: CellField): TemplateResult {
  const { id, label, value, faultId, onInput } = field;
  return html`<input
      id=${id}
      type="text"
      inputmode="decimal"
      autocomplete="off"
      aria-label=${label}
      .value=${value}
      aria-invalid=${faultId === undefined ? nothing : 'true'}
      aria-describedby=${faultId ?? nothing}
      @focus=${offerFractions}
      @input=${({ target }: InputEvent) => onInput((target as HTMLInputElement).value)}
    />${
      field.fractions === undefined ? nothing : fractionPlace(id, `${field.fractions}: ${label}`)
    }`;
}
