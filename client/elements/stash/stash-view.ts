import { html, nothing, type TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { type StashContext, sayFault, sayLength } from './stash-context.ts';
import { findOption, listOtherFaults } from './stash-state.ts';
import { tableView, wishView } from './stash-view-ask.ts';
import { othersView, quiltView } from './stash-view-quilt.ts';
import { cuttingView, groundsView } from './stash-view-sheets.ts';

/** The whole element from its state: what there is on one side, what it makes on the other, how to cut it below. */
export function stashView(context: StashContext, hasFoot: boolean): TemplateResult {
  const { state, text, act } = context;
  const option = findOption(state);
  return html`<div class="table ${state.isBusy ? 'busy' : ''}">
    <div class="part see">
      <div class="off" role="alert">${noticesView(context)}</div>
      ${quiltView(context, option)}
    </div>
    <div class="part ask">${tableView(context)}${wishView(context)}</div>
    <div class="part others">${othersView(context)}</div>
    ${
      option === undefined
        ? nothing
        : html`<div class="sheets">
            <div class="part">${cuttingView(context, option)}</div>
            <div class="part">
              ${groundsView(context)}
              <button @click=${act.print}>${text.print}</button>
            </div>
          </div>`
    }
    <p class="hidden" role="status" aria-atomic="true">${sayReady(context)}</p>
    ${option && hasFoot ? footView(context) : nothing}
  </div>`;
}

/** What stands between the table and an answer; the region is there before anything is said in it. */
function noticesView(context: StashContext): readonly unknown[] {
  const { state, text, words, act } = context;
  const { faults, hostFaults, answer } = state;
  const others = listOtherFaults(faults);
  const notice = (isSo: boolean, body: unknown) =>
    isSo ? html`<div class="notice">${body}</div>` : nothing;
  return [
    notice(hostFaults.length > 0, [text.host, listView(context, hostFaults)]),
    notice(others.length > 0, listView(context, others)),
    notice(faults.length > 0 && answer !== undefined, words.stale),
    notice(state.isUnreachable, [
      text.unreachable,
      html` <button @click=${act.retry}>${text.retry}</button>`,
    ]),
    notice(state.from === 'device' && answer !== undefined, text.device),
  ];
}

function listView(context: StashContext, faults: readonly Fault[]): TemplateResult {
  return html`<ul>
    ${faults.map(
      (fault) => html`<li>${sayFault(context, fault)} <small>${fault.path.join('.')}</small></li>`,
    )}
  </ul>`;
}

function listFigures(context: StashContext): readonly string[] {
  const option = findOption(context.state);
  if (option === undefined) return [];
  const { columns, rows, washed, cut } = option;
  return [
    sayLength(context, washed.width, washed.height),
    `${columns} × ${rows}`,
    `${context.words.figures.each} ${sayLength(context, cut)}`,
  ];
}

/** The figures in a bar that stays in sight on a phone; decoration, since they stand above. */
function footView(context: StashContext): TemplateResult {
  return html`<div class="foot" aria-hidden="true">
    ${listFigures(context).map((said) => html`<span>${said}</span>`)}
  </div>`;
}

/** One sentence for those who hear the page, when an answer is ready. */
function sayReady(context: StashContext): string {
  const { isBusy, faults, answer } = context.state;
  if (isBusy || answer === undefined || faults.length > 0) return '';
  return context.words.ready(listFigures(context).join(', ') || context.words.none);
}
