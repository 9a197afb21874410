/** What the form around an element is told. */
export interface FormFacts {
  /** What it sends; nothing while there is no answer to what was typed. */
  readonly value: string | undefined;
  /** What the browser keeps to restore the element from: the draft as a query. */
  readonly draft: string;
  /** What is wrong, in words; empty where nothing is. */
  readonly message: string;
  /** Where the browser points when it says so. */
  readonly anchor: HTMLElement | undefined;
}

/** Tells the form around an element what it is worth and whether it is right. */
export function tellForm(internals: ElementInternals, facts: FormFacts): void {
  const { value, draft, message, anchor } = facts;
  internals.setFormValue(value ?? null, draft);
  internals.setValidity({ customError: message !== '' }, message, anchor);
}
