import { html, nothing, type TemplateResult } from 'lit';
import { fromMillimetres, toMillimetres } from '#core/length.ts';
import { usualWidths } from '#core/tables/bolt-widths.ts';
import { writePlace } from '../../data/counter-place.ts';
import type { CounterRow } from '../../data/counter-rows.ts';
import { numberField } from '../../fields/number-field.ts';
import { type CounterContext, sayFaultAt, sayLength } from './counter-context.ts';
import { askInstead } from './counter-state.ts';
import { sayAsk } from './counter-view-answer.ts';

/** The bolt that lies there: its width, with what each usual width would take, and its price. */
export function boltView(context: CounterContext, row: CounterRow): TemplateResult {
  return html`${widthsView(context, row)}
    <div class="fields">${widthField(context, row)}${priceField(context, row)}</div>`;
}

/** The widths that cloth is sold in, and the plan's own; each says how it changes what to ask for. */
function widthsView(context: CounterContext, row: CounterRow): TemplateResult {
  const { text, act } = context;
  const { unit, roll } = row.need;
  const own = fromMillimetres(roll.width, unit);
  const widths = [...new Set([own, ...usualWidths(unit)])].toSorted((one, other) => one - other);
  const choose = (width: number) => act.type('width', width === own ? '' : `${width}`);
  return html`<fieldset>
    <legend class="hidden">${text.counter.widths}</legend>
    <div class="widths">
      ${widths.map((width) => {
        const side = toMillimetres(width, unit);
        return html`<label class="chip">
          <input
            type="radio"
            name="width"
            .checked=${Math.abs(row.bolt.width - side) < 1e-6}
            @change=${() => choose(width)}
          /><b>${sayLength(text, unit, side)}</b>
          <small>${sayAsk(context, row, side) ?? '–'}</small>
        </label>`;
      })}
    </div>
  </fieldset>`;
}

function widthField(context: CounterContext, { need }: CounterRow): TemplateResult {
  const { text, act, state, at } = context;
  return numberField({
    id: 'width',
    label: text.counter.ownWidth,
    value: state.place.shop[`${at}.width`] ?? '',
    placeholder: `${fromMillimetres(need.roll.width, need.unit)}`,
    unit: need.unit,
    fault: sayFaultAt(context, 'width'),
    fractions: need.unit === 'in' ? text.light.fractions : undefined,
    onInput: (typed) => act.type('width', typed),
  });
}

function priceField(context: CounterContext, { need }: CounterRow): TemplateResult {
  const { text, act, state, at, currency } = context;
  return numberField({
    id: 'price',
    label: text.counter.price(need.unit === 'in' ? 'yd' : 'm'),
    value: state.place.shop[`${at}.price`] ?? '',
    unit: currency === '' ? undefined : currency,
    fault: sayFaultAt(context, 'price'),
    onInput: (typed) => act.type('price', typed),
  });
}

/** The other way round: what is left on the bolt, and what it makes. */
export function leftView(context: CounterContext, { need, left }: CounterRow): TemplateResult {
  const { text, act, state, at } = context;
  const unit = need.unit === 'in' ? 'yd' : 'm';
  const field = numberField({
    id: 'left',
    label: text.counter.left,
    value: state.place.shop[`${at}.left`] ?? '',
    unit,
    fault: sayFaultAt(context, 'left'),
    fractions: unit === 'yd' ? text.light.fractions : undefined,
    onInput: (typed) => act.type('left', typed),
  });
  const isShort = left !== undefined && left.squares < need.squares;
  return html`${field}
    ${left === undefined ? html`<p class="soft">${text.counter.leftHint}</p>` : nothing}
    ${isShort && state.counter?.plan ? nearestView(context) : nothing}`;
}

function nearestView({ text, state, act }: CounterContext): TemplateResult {
  const words = text.counter;
  const { nearest, counter } = state;
  const unit = counter?.unit ?? 'in';
  const say = (...values: number[]) =>
    sayLength(text, unit, ...values.map((value) => toMillimetres(value, unit)));
  if (nearest === undefined) return html`<p class="nearest"></p>`;
  if (nearest === 'none') return html`<p class="nearest">${words.none}</p>`;
  if (nearest === 'unfetched') return html`<p class="nearest">${words.unfetched}</p>`;
  const { columns, rows, cut, washed, question } = nearest;
  const take = () => act.open(writePlace(askInstead(state.place, question)));
  return html`<div class="nearest" part="nearest">
    <p>${words.nearest}:</p>
    <p><b>${words.nearestIs(columns, rows, say(cut))}</b></p>
    <p class="soft">${words.nearestSize(say(washed.width, washed.height))}</p>
    <button @click=${take}>${words.take}</button>
  </div>`;
}
