import { html, type TemplateResult } from 'lit';
import { noticesView } from '../../fields/notices-view.ts';
import { unitChips } from '../../fields/unit-chips.ts';
import type { CompareContext } from './compare-context.ts';
import { askView, drawingsView } from './compare-view-sides.ts';
import { tableView } from './compare-view-table.ts';
import { listFigures } from './list-figures.ts';
import { sayMeasure } from './say-measure.ts';

/** The whole element from its state: which plans, both drawn, both told in figures. */
export function compareView(context: CompareContext): TemplateResult {
  const { state, words, act, telling } = context;
  const { a, b } = state;
  const isBusy = a.isBusy || b.isBusy;
  const trouble = a.trouble ?? b.trouble;
  const isShown = a.answer !== undefined || b.answer !== undefined;
  return html`<div class="comparison ${isBusy ? 'busy' : ''}">
    <section class="card" part="ask">
      <header>
        <h2>${words.compare.title}</h2>
        <button class="off" ?disabled=${context.isLocked('a') || context.isLocked('b')} @click=${act.swap}>${words.compare.swap}</button>
      </header>
      <div class="asked">${askView(context, 'a')}${askView(context, 'b')}</div>
      <div class="off">${unitChips(words.light.unitQuestion, telling.unit, act.measureIn)}</div>
    </section>
    ${noticesView({
      words: words.light,
      odd: [],
      trouble,
      isOld: trouble !== undefined && isShown,
      from: isShown && [a, b].some(({ from }) => from === 'device') ? 'device' : undefined,
      retry: act.retry,
    })}
    ${
      isShown
        ? html`<section class="stack compared">${drawingsView(context)}</section>
            <section class="card">${tableView(context)}</section>`
        : html`<p class="waiting">${isBusy ? '' : words.compare.none}</p>`
    }
    <p class="hidden" role="status" aria-atomic="true">${isBusy ? '' : sayReady(context)}</p>
  </div>`;
}

/** One sentence for those who hear the page, when both plans are there. */
function sayReady({ state, words, telling }: CompareContext): string {
  const sizes = [state.a, state.b].flatMap(({ answer }) => {
    if (answer === undefined) return [];
    const { width = 0, height = 0 } = listFigures(answer);
    return [[width, height].map((side) => sayMeasure('length', side, telling)).join(' × ')];
  });
  const [one, other] = sizes;
  return one !== undefined && other !== undefined ? words.compare.ready(one, other) : '';
}
