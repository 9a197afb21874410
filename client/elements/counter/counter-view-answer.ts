import { html, nothing, type TemplateResult } from 'lit';
import { askBolt } from '#core/counter/ask-bolt.ts';
import { type BoltSum, sumBolts } from '#core/counter/sum-bolts.ts';
import type { CounterRow } from '../../data/counter-rows.ts';
import {
  type CounterContext,
  nameCloth,
  sayLength,
  sayMoney,
  sayPurchase,
} from './counter-context.ts';
import { speakPurchase } from './speak-purchase.ts';

/** The upper half: what to ask for of the cloth in hand, as large as it goes. */
export function answerView(context: CounterContext, row: CounterRow): TemplateResult {
  const { text, rows, at } = context;
  const words = text.counter;
  const { name, role } = nameCloth(text, row.need);
  return html`<section class="answer" part="answer">
    <header>
      <h2>${name}</h2>
      <p class="soft">${role} ${rows.length > 1 ? words.of(at + 1, rows.length) : nothing}</p>
    </header>
    ${amountView(context, row)}
    ${verdictView(context, row)}
    ${sumView(context)}
  </section>`;
}

function amountView({ text }: CounterContext, { need, ask, bolt }: CounterRow): TemplateResult {
  const words = text.counter;
  const side = sayLength(text, need.unit, need.cut);
  const width = words.off(sayLength(text, need.unit, bolt.width));
  if (ask.buy === undefined) {
    return html`<p class="amount narrow" part="amount"><b>${words.tooNarrow}</b></p>
      <p class="fault">${words.narrowHint(side)} <span class="soft">${width}</span></p>`;
  }
  const said = sayPurchase(text, ask.buy);
  const gap = said.indexOf('\u00a0');
  const spare = need.spare > 0 ? html` <br />${words.spare(need.spare)}` : nothing;
  return html`<p class="amount" part="amount"><b>${said.slice(0, gap)}</b> <small>${said.slice(gap + 1)}</small></p>
    <p class="spoken" part="spoken">${speakPurchase(words.language, ask.buy)}</p>
    <p class="soft">
      ${words.strips(ask.strips, ask.perStrip, side)}, ${width}${spare}
    </p>`;
}

/** Whether what is left on the bolt is enough; told by a sign and words, never by colour alone. */
function verdictView({ text }: CounterContext, { left, need }: CounterRow) {
  if (left === undefined) return nothing;
  const words = text.counter;
  const over = left.squares - need.squares;
  const isEnough = over >= 0;
  if (over === 0) {
    return html`<p class="verdict enough" part="verdict"><b>${words.exactly}</b></p>`;
  }
  const more = isEnough ? words.enoughBy(over) : words.shortBy(left.squares, need.squares);
  return html`<p class="verdict ${isEnough ? 'enough' : 'short'}" part="verdict">
    <b>${isEnough ? words.enough : words.short}</b> ${more}
  </p>`;
}

/** How much of it is bought, and what it comes to. */
function sumView(context: CounterContext): TemplateResult {
  const { text, rows } = context;
  const words = text.counter;
  const got = rows.filter(({ isGot }) => isGot);
  const [soFar, all] = [got, rows].map(sumRows);
  const hasPrice = all !== undefined && all.unpriced < rows.length;
  return html`<p class="sum" part="sum">
    <span>${words.boughtOf(got.length, rows.length)}</span>
    ${hasPrice ? html`<span>${words.soFar} <b>${sayMoney(context, soFar?.total ?? 0)}</b></span>` : nothing}
    ${hasPrice ? html`<span>${words.all} <b>${sayMoney(context, all.total)}</b></span>` : nothing}
    ${hasPrice && all.unpriced > 0 ? html`<span>${words.withoutPrice(all.unpriced)}</span>` : nothing}
  </p>`;
}

/** What cloths come to, each off its own bolt. */
export function sumRows(rows: readonly CounterRow[]): BoltSum {
  return sumBolts(
    rows.map(({ need }) => need),
    rows.map(({ bolt }) => bolt),
  );
}

/** What to ask for off a bolt of another width, in figures; nothing where it is too narrow. */
export function sayAsk(
  { text }: CounterContext,
  { need }: CounterRow,
  width: number,
): string | undefined {
  const { buy } = askBolt(need, width);
  return buy && sayPurchase(text, buy);
}
