import { html, type TemplateResult } from 'lit';

/** A piece of cloth on the table: one part of the plan with its title. */
export function sheetView(
  part: string,
  title: string,
  body: TemplateResult,
  aside?: TemplateResult,
): TemplateResult {
  return html`<section class="card ${part}" part=${part}>
    <header><h2>${title}</h2>${aside}</header>
    ${body}
  </section>`;
}
