import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { NUMBER_LIMITS } from '#core/limits.ts';
import { fieldView } from '../../fields/field-view.ts';
import type { WorkWords } from '../../text/work/source.ts';
import type { ClassWish } from './hand-out.ts';
import { FORM_STYLES } from './hand-out-styles.ts';
import { openDialog } from './open-dialog.ts';
import type { MakingContext } from './plan-context.ts';

/** What the form shows, and what it does. */
export interface HandOutForm {
  readonly words: WorkWords;
  readonly fault?: 'pupils' | 'unreachable';
  readonly isBusy?: boolean;
  readonly onSubmit: (wish: ClassWish) => void;
}

const dress = (element?: Element) => openDialog(element, FORM_STYLES);

/** The short form before the hand-out is printed; what was typed stays in its fields. */
export function handOutForm(
  { text, act }: Pick<MakingContext, 'text' | 'act'>,
  { words: { handOut: words }, fault, isBusy = false, onSubmit }: HandOutForm,
): TemplateResult {
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget as HTMLFormElement);
    const read = (name: string) => String(typed.get(name) ?? '').trim();
    onSubmit({
      heading: read('heading') || words.usual,
      pupils: read('pupils'),
      note: read('note'),
    });
  };
  return html`<dialog class="form" aria-labelledby="hand-out" ${ref(dress)} @close=${() => act.lay()}>
    <form method="dialog" @submit=${submit}>
      <h2 id="hand-out">${words.title}</h2>
      <p class="soft">${words.explain}</p>
      ${lineField({ name: 'heading', label: words.heading, example: words.headingExample })}
      ${pupilsField(words, fault === 'pupils')}
      ${noteField(words)}
      <p class="soft" role="status">${isBusy ? words.busy : ''}</p>
      <p role="alert">${fault === 'unreachable' ? text.unreachable : ''}</p>
      <div class="chips">
        <button type="submit" class="go" ?disabled=${isBusy}>${words.print}</button>
        <button type="button" @click=${closeAbove}>${words.cancel}</button>
      </div>
    </form>
  </dialog>`;
}

function closeAbove({ target }: Event): void {
  (target as Element).closest('dialog')?.close();
}

function lineField({
  name,
  label,
  example,
}: {
  readonly name: string;
  readonly label: string;
  readonly example: string;
}): TemplateResult {
  return fieldView(
    { id: `class-${name}`, label },
    ({ id }) =>
      html`<input id=${id} name=${name} type="text" maxlength="80" autocomplete="off" placeholder=${example} />`,
  );
}

function pupilsField(words: WorkWords['handOut'], isFaulty: boolean): TemplateResult {
  const { most } = NUMBER_LIMITS.pupils;
  return fieldView(
    { id: 'class-pupils', label: words.pupils, fault: isFaulty ? words.fault(most) : undefined },
    ({ id, invalid, by }) =>
      html`<input
        id=${id}
        name="pupils"
        class="narrow"
        type="text"
        inputmode="numeric"
        autocomplete="off"
        value="8"
        aria-invalid=${invalid}
        aria-describedby=${isFaulty ? by : nothing}
      />`,
  );
}

function noteField(words: WorkWords['handOut']): TemplateResult {
  return fieldView(
    { id: 'class-note', label: words.note },
    ({ id }) =>
      html`<textarea id=${id} name="note" maxlength="300" placeholder=${words.noteExample}></textarea>`,
  );
}
