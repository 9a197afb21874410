import { html, noChange, type TemplateResult } from 'lit';

/** What is folded away under its title. */
export interface Fold {
  readonly title: string;
  readonly body: unknown;
  /** Unfolded to begin with, or from now on. */
  readonly isOpen?: boolean;
  /** Something in it has to be seen to: it unfolds, whoever folded it before. */
  readonly isFaulty?: boolean;
  readonly onToggle?: (isOpen: boolean) => void;
}

/** An object is set each time, though it was set before: a person may have folded it in between. */
const ALWAYS = Object(true);

/** Unfolds by itself and never folds by itself, so that nobody loses the field that they are mending. */
export function foldView({ title, body, isOpen, isFaulty, onToggle }: Fold): TemplateResult {
  return html`<details
    .open=${isFaulty ? ALWAYS : isOpen || noChange}
    @toggle=${({ target }: Event) => onToggle?.((target as HTMLDetailsElement).open)}
  >
    <summary>${title}</summary>
    ${body}
  </details>`;
}
