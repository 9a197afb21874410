import { html, nothing, type TemplateResult } from 'lit';
import { askBolt } from '#core/counter/ask-bolt.ts';
import { priceLength } from '#core/counter/price-length.ts';
import { type Bolt, sumBolts } from '#core/counter/sum-bolts.ts';
import { fromMillimetres } from '#core/length.ts';
import type { CounterRow } from '../../data/counter-rows.ts';
import { numberField } from '../../fields/number-field.ts';
import { type CounterContext, sayFaultAt, sayLength, sayMoney } from './counter-context.ts';
import { sayAsk } from './counter-view-answer.ts';

/** Two bolts of the cloth in hand, by what the whole quilt costs with either. */
export function compareView(context: CounterContext, row: CounterRow): TemplateResult {
  const { text, act, state, at, currency } = context;
  const words = text.counter;
  const { unit } = row.need;
  const value = (place: string) => state.place.shop[`${at}.${place}`] ?? '';
  return html`<div class="fields">
      ${numberField({
        id: 'otherWidth',
        label: words.otherWidth,
        value: value('otherWidth'),
        placeholder: `${fromMillimetres(row.bolt.width, unit)}`,
        unit,
        fault: sayFaultAt(context, 'otherWidth'),
        fractions: unit === 'in' ? text.light.fractions : undefined,
        onInput: (typed) => act.type('otherWidth', typed),
      })}
      ${numberField({
        id: 'otherPrice',
        label: words.otherPrice,
        value: value('otherPrice'),
        unit: currency === '' ? undefined : currency,
        fault: sayFaultAt(context, 'otherPrice'),
        onInput: (typed) => act.type('otherPrice', typed),
      })}
    </div>
    ${boltsView(context, row)}`;
}

function boltsView(context: CounterContext, row: CounterRow): TemplateResult {
  const words = context.text.counter;
  const { other = { width: row.bolt.width } } = row;
  const line = (label: string, bolt: Bolt) => html`<tr>
    <th scope="row">${label} <small>${sayLength(context.text, row.need.unit, bolt.width)}</small></th>
    <td><b>${sayAsk(context, row, bolt.width) ?? words.tooNarrow}</b></td>
    <td>${moneyOf(context, costOf(row, bolt))}</td>
    <td>${moneyOf(context, wholeWith(context, bolt))}</td>
  </tr>`;
  return html`<table part="bolts">
      <thead><tr><td></td><th scope="col">${words.ask}</th><th scope="col">${words.thisCloth}</th><th scope="col">${words.whole}</th></tr></thead>
      <tbody>${line(words.one, row.bolt)}${row.other && line(words.two, other)}</tbody>
    </table>
    <p>${sayCheaper(context, row)}</p>`;
}

function moneyOf(context: CounterContext, minor: number | undefined): string {
  return minor === undefined ? '–' : sayMoney(context, minor);
}

function costOf({ need }: CounterRow, { width, price }: Bolt): number | undefined {
  const { buy } = askBolt(need, width);
  return buy && price !== undefined ? priceLength(price, buy.amount) : undefined;
}

/** What all cloths come to with this bolt for the one in hand; nothing where it has no price or is too narrow. */
function wholeWith({ rows, at }: CounterContext, bolt: Bolt): number | undefined {
  const row = rows[at];
  if (row === undefined || costOf(row, bolt) === undefined) return undefined;
  const bolts = rows.map((one, place) => (place === at ? bolt : one.bolt));
  return sumBolts(
    rows.map(({ need }) => need),
    bolts,
  ).total;
}

function sayCheaper(context: CounterContext, row: CounterRow) {
  const words = context.text.counter;
  const one = wholeWith(context, row.bolt);
  const two = row.other && wholeWith(context, row.other);
  if (one === undefined || two === undefined) return words.cheaper.unknown;
  const { unpriced } = sumBolts(
    context.rows.map(({ need }) => need),
    context.rows.map(({ bolt }) => bolt),
  );
  const gap = one - two;
  const said =
    gap === 0
      ? words.cheaper.same
      : words.cheaper[gap < 0 ? 'one' : 'two'](sayMoney(context, Math.abs(gap)));
  return html`<b>${said}</b> ${unpriced > 0 ? html`<small>${words.withoutPrice(unpriced)}</small>` : nothing}`;
}
