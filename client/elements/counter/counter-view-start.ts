import { html, nothing, type TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { writeQuery } from '../../data/draft.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { numberField } from '../../fields/number-field.ts';
import { type CounterContext, tellFault } from './counter-context.ts';

const UNITS: readonly (readonly [Unit, string])[] = [
  ['in', 'in'],
  ['cm', 'cm'],
];

/** What is asked before anything is on the counter: a plan, or squares of one size. */
export function startView(context: CounterContext): TemplateResult {
  const { text, state, act } = context;
  const words = text.counter.start;
  const typed = state.place.shop;
  return html`<section class="start card" part="start">
    <h2>${words.title}</h2>
    ${faultsView(context)}
    ${
      state.lastPlan === ''
        ? nothing
        : html`<button class="go" @click=${() => act.open(state.lastPlan)}>${words.last}</button>`
    }
    <form class="field" @submit=${submit(() => act.open(typed['address'] ?? ''))}>
      <label for="address">${words.address}</label>
      <input
        id="address"
        type="text"
        inputmode="url"
        autocomplete="off"
        autocapitalize="off"
        aria-describedby="address-hint"
        .value=${typed['address'] ?? ''}
        @input=${({ target }: InputEvent) => act.enter('address', (target as HTMLInputElement).value)}
      />
      <small id="address-hint">${words.addressHint}</small>
      <button>${words.open}</button>
    </form>
    ${squaresView(context)}
  </section>`;
}

function squaresView(context: CounterContext): TemplateResult {
  const { text, state, act } = context;
  const words = text.counter.start;
  const { unit: chosen, cut = '', count = '' } = state.place.shop;
  const unit = chosen === 'cm' ? 'cm' : 'in';
  const faultAt = (place: string) => {
    const fault = state.faults.find(({ path }) => path.join('.') === place);
    return fault && tellFault(text, fault);
  };
  return html`<form class="stack" @submit=${submit(() => act.open(`?${writeQuery({ unit, cut: cut || ' ', count: count || ' ' })}`))}>
    <h3>${words.or}</h3>
    ${choiceChips({
      name: 'unit',
      legend: text.light.unitQuestion,
      choices: UNITS,
      chosen: unit,
      onChoose: (value) => act.enter('unit', value === 'cm' ? value : ''),
      quiet: true,
    })}
    <div class="fields">
      ${numberField({
        id: 'cut',
        label: words.cut,
        value: cut,
        unit,
        fault: faultAt('cut'),
        fractions: unit === 'in' ? text.light.fractions : undefined,
        onInput: (text) => act.enter('cut', text),
      })}
      ${numberField({
        id: 'count',
        label: words.count,
        value: count,
        fault: faultAt('count'),
        onInput: (text) => act.enter('count', text),
      })}
    </div>
    <button class="go">${words.go}</button>
  </form>`;
}

/** What is wrong with a plan, but for what stands at its own field. */
function faultsView(context: CounterContext): TemplateResult {
  const { state, text } = context;
  const others = state.faults.filter(({ path }) => !['cut', 'count'].includes(path.join('.')));
  return html`<div role="alert">
    ${
      others.length === 0
        ? nothing
        : html`<p>${text.counter.faulty}</p>
            <ul>${others.map((fault) => html`<li>${sayOther(context, fault)}</li>`)}</ul>`
    }
  </div>`;
}

function sayOther({ text }: CounterContext, fault: Fault) {
  const place = fault.path.join('.');
  if (place === 'address') return text.counter.start.noPlan;
  return html`${tellFault(text, fault)} <small>${place}</small>`;
}

function submit(then: () => void) {
  return (event: Event) => {
    event.preventDefault();
    then();
  };
}
