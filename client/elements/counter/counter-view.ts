import { html, nothing, type TemplateResult } from 'lit';
import type { CounterRow } from '../../data/counter-rows.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import type { CounterContext } from './counter-context.ts';
import type { Mode } from './counter-state.ts';
import { answerView } from './counter-view-answer.ts';
import { boltView, leftView } from './counter-view-bolt.ts';
import { compareView } from './counter-view-compare.ts';
import { listView } from './counter-view-list.ts';
import { startView } from './counter-view-start.ts';

const MODES: readonly Mode[] = ['bolt', 'left', 'other', 'list'];

/** The whole element from its state: the answer above, all that the thumb needs below. */
export function counterView(context: CounterContext): TemplateResult {
  const { rows, at, state } = context;
  const row = rows[at];
  return html`<div class="counter">
    ${row === undefined ? startView(context) : [answerView(context, row), handView(context, row)]}
    <p class="hidden" role="status" aria-atomic="true">${state.said}</p>
  </div>`;
}

function handView(context: CounterContext, row: CounterRow): TemplateResult {
  const { state, text, act } = context;
  const words = text.counter;
  return html`<section class="hand" part="controls">
    <div class="modes">
      ${choiceChips({
        name: 'mode',
        legend: words.modesLegend,
        choices: MODES.map((mode) => [mode, words.modes[mode]] as const),
        chosen: state.mode,
        onChoose: act.turnTo,
        quiet: true,
      })}
    </div>
    <div class="panel">${panelView(context, row)}</div>
    ${barView(context, row)}
  </section>`;
}

function panelView(context: CounterContext, row: CounterRow): TemplateResult {
  switch (context.state.mode) {
    case 'left':
      return leftView(context, row);
    case 'other':
      return compareView(context, row);
    case 'list':
      return listView(context);
    default:
      return boltView(context, row);
  }
}

/** At the very foot, where the thumb rests: tick this cloth, go to the next. */
function barView({ text, rows, at, act }: CounterContext, { isGot }: CounterRow): TemplateResult {
  const words = text.counter;
  const step = (label: string, sign: string, to: number) => html`<button
    aria-label=${label}
    ?disabled=${to < 0 || to >= rows.length}
    @click=${() => act.take(to)}
  >${sign}</button>`;
  return html`<div class="bar">
    ${rows.length > 1 ? step(words.previous, '‹', at - 1) : nothing}
    <label class="check tick">
      <input
        type="checkbox"
        .checked=${isGot}
        @change=${({ target }: Event) => act.tick(at, (target as HTMLInputElement).checked)}
      /><span>${words.bought}</span>
    </label>
    ${rows.length > 1 ? step(words.next, '›', at + 1) : nothing}
  </div>`;
}
