import { html, type TemplateResult } from 'lit';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { writeHours, writeMeasure } from '../../fields/write-figures.ts';
import { figureView, type MakingContext, sayLength } from './plan-context.ts';
import { listIdle } from './plan-state.ts';

/** What to buy and how to cut it, one row for each cloth, and the thread. */
export function shoppingView(context: MakingContext, answer: ShownPlan): TemplateResult {
  const { text } = context;
  const { thread, block } = answer;
  const words = text.making.shopping;
  const idle = listIdle(answer).length;
  const spool = (amount: number) => writeMeasure(text.language, thread.unit, Math.ceil(amount));
  return sheetView(
    'shopping',
    words.title,
    html`<table>
        <thead><tr>${words.columns.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
        <tbody>
          ${answer.fabrics
            .filter(({ pieces }) => pieces > 0)
            .map((need) => needView(context, answer, need))}
        </tbody>
      </table>
      ${idle > 0 ? html`<p class="soft">${words.idle(idle)}</p>` : ''}
      <p class="soft">${words.how(sayLength(context, block.cut))}</p>
      ${factsList([
        [
          words.thread,
          words.threadText(spool(thread.used), Math.ceil(thread.bobbins), spool(thread.saved)),
        ],
      ])}
      <slot name="shopping"></slot>`,
  );
}

function factsList(facts: readonly (readonly [name: string, said: string])[]): TemplateResult {
  return html`<dl class="pairs">
    ${facts.map(([name, said]) => html`<dt>${name}</dt><dd>${said}</dd>`)}
  </dl>`;
}

function needView(
  { text }: MakingContext,
  answer: ShownPlan,
  need: ShownPlan['fabrics'][number],
): TemplateResult {
  const { role, print, buy } = need;
  const prints = answer.input.layers.find((layer) => layer.role === role)?.prints ?? [];
  const index = Math.max(
    0,
    prints.findIndex(({ id }) => id === print),
  );
  const isNamed = print !== undefined && print.length > 1;
  return html`<tr>
    <th scope="row">
      <span class="name">
        ${role === 'top' ? printSwatch(index, prints[index]?.color) : html`<i></i>`}
        <span>${isNamed ? print : text.fabric(need.fabric)}<small>${role === 'top' ? '' : text.role(role)}</small></span>
      </span>
    </th>
    <td>${figureView(writeMeasure(text.language, buy.unit, buy.amount))}</td>
    <td>${need.strips} <small>${text.making.shopping.each(need.perStrip)}</small></td>
    <td>${need.pieces + need.spare}</td>
  </tr>`;
}

/** Hours, weight, row ends and shrink in plain words. */
export function factsView(context: MakingContext, answer: ShownPlan): TemplateResult {
  const { text } = context;
  const { weight, mismatch, size, input, time, block } = answer;
  const mass = (value: number) => writeMeasure(text.language, weight.unit, value);
  const percent = (value: number) => writeMeasure(text.language, '%', -value);
  const words = text.making.facts;
  const { within, withinFromOneEnd } = mismatch;
  return sheetView(
    'facts',
    words.title,
    factsList([
      [
        text.states.sewn,
        `${sayLength(context, size.sewn.width, size.sewn.height)}. ${text.making.edges.seam} ${sayLength(context, block.seam)}.`,
      ],
      [
        words.work,
        words.workText(writeHours(time.total), time.snip > 0 ? writeHours(time.snip) : ''),
      ],
      [
        words.weight,
        words.weightText(
          mass(weight.dry),
          mass(weight.wet),
          text.making.machines[weight.washer.machine],
        ),
      ],
      [
        words.rows,
        words.rowsText(
          sayLength(context, input.tolerance.ease),
          Math.round(within),
          Math.round(withinFromOneEnd),
        ),
      ],
      [words.shrink, words.shrinkText(percent(size.change.width), percent(size.change.height))],
    ]),
  );
}
