import { html, nothing, svg, type TemplateResult } from 'lit';
import type { CounterRow } from '../../data/counter-rows.ts';
import { type CounterContext, nameCloth, sayMoney, sayPurchase } from './counter-context.ts';

/** Every cloth with its tick; then what to do with the list. */
export function listView(context: CounterContext): TemplateResult {
  const { text, act, rows, canShare } = context;
  const words = text.counter;
  return html`<ul class="list" part="list">${rows.map((row, at) => rowView(context, row, at))}</ul>
    <div class="chips">
      ${canShare ? html`<button @click=${act.share}>${words.share}</button>` : nothing}
      <button @click=${act.showCode}>${words.code}</button>
      <button @click=${act.leave}>${words.another}</button>
    </div>
    ${codeView(context)}`;
}

function rowView(context: CounterContext, row: CounterRow, at: number): TemplateResult {
  const { text, act } = context;
  const { name, role } = nameCloth(text, row.need);
  const amount = row.ask.buy ? sayPurchase(text, row.ask.buy) : text.counter.tooNarrow;
  return html`<li class=${at === context.at ? 'hand' : ''}>
    <label class="check">
      <input
        type="checkbox"
        .checked=${row.isGot}
        aria-label="${text.counter.bought}: ${name}"
        @change=${({ target }: Event) => act.tick(at, (target as HTMLInputElement).checked)}
      />
    </label>
    <button class="cloth" aria-current=${at === context.at ? 'true' : nothing} @click=${() => act.take(at)}>
      <span>${name} <small>${role}</small></span>
      <span><b>${amount}</b> ${row.cost === undefined ? nothing : html`<small>${sayMoney(context, row.cost)}</small>`}</span>
    </button>
  </li>`;
}

/** The address as a code that the camera of another phone reads: black on white whatever the scheme. */
function codeView({ state, text }: CounterContext) {
  const words = text.counter;
  const { code } = state;
  if (code === undefined) return nothing;
  if (code === 'long') return html`<p>${words.tooLong}</p>`;
  if (code === 'unfetched') return html`<p>${words.unfetched}</p>`;
  return html`<figure class="code" part="code">
    <svg viewBox="0 0 ${code.side} ${code.side}" role="img" aria-label=${words.codeTitle} shape-rendering="crispEdges">
      ${svg`<rect width=${code.side} height=${code.side} fill="#fff"></rect><path d=${code.path} fill="#000"></path>`}
    </svg>
    <figcaption class="soft">${words.codeHint}</figcaption>
  </figure>`;
}
