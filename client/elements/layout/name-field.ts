import { html, type TemplateResult } from 'lit';
import { type FieldFrame, fieldView } from '../../fields/field-view.ts';

/** One entry for a name. */
export interface NameField extends FieldFrame {
  readonly value: string;
  /** It can be read and copied but not changed; `reason` says why. */
  readonly isLocked: boolean;
  readonly reason: string;
  readonly onInput: (text: string) => void;
}

/** A plain text field. */
export function nameField(field: NameField): TemplateResult {
  return fieldView(
    field,
    ({ id, invalid, by }) => html`<input
      id=${id}
      type="text"
      autocomplete="off"
      .value=${field.value}
      ?readonly=${field.isLocked}
      title=${field.isLocked ? field.reason : ''}
      aria-invalid=${invalid}
      aria-describedby=${by}
      @input=${({ target }: InputEvent) => field.onInput((target as HTMLInputElement).value)}
    />`,
  );
}
