import { html, nothing, type TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { writeMoney } from '../../data/money.ts';
import { type KitsContext, sayFault } from './kits-context.ts';
import { listOtherFaults } from './kits-state.ts';
import { kitView, moneyView } from './kits-view-kit.ts';
import { resultView } from './kits-view-result.ts';
import { cuttingView, groundsView, shelfView } from './kits-view-sheets.ts';
import { tableView } from './kits-view-table.ts';

/** The whole element from its state: bolts and kit on one side, what comes of them on the other, the sheets below. */
export function kitsView(context: KitsContext, hasFoot: boolean): TemplateResult {
  const { state, text, act } = context;
  const { answer } = state;
  return html`<div class="table ${state.isBusy ? 'busy' : ''}">
    <div class="part see">
      <div class="off" role="alert">${noticesView(context)}</div>
      ${resultView(context)}
    </div>
    <div class="part ask">${tableView(context)}${kitView(context)}${moneyView(context)}</div>
    <div class="part others">${answer && shelfView(context, answer)}</div>
    ${
      answer === undefined
        ? nothing
        : html`<div class="sheets">
            <div class="part">${cuttingView(context, answer)}</div>
            <div class="part">
              ${groundsView(context, answer)}
              <button @click=${act.print}>${text.print}</button>
            </div>
          </div>`
    }
    <p class="hidden" role="status" aria-atomic="true">${sayReady(context)}</p>
    ${answer && hasFoot ? footView(context) : nothing}
  </div>`;
}

/** What stands between the table and an answer; the region is there before anything is said in it. */
function noticesView(context: KitsContext): readonly unknown[] {
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

function listView(context: KitsContext, faults: readonly Fault[]): TemplateResult {
  return html`<ul>
    ${faults.map(
      (fault) => html`<li>${sayFault(context, fault)} <small>${fault.path.join('.')}</small></li>`,
    )}
  </ul>`;
}

function listFigures({ state, text, words }: KitsContext): readonly string[] {
  const { answer } = state;
  if (answer === undefined) return [];
  const { money, made } = answer;
  const say = (minor: number) => writeMoney(text.language, money?.currency ?? '', minor);
  return [
    words.result.group(made),
    ...(money === undefined ? [] : [words.result.costs(say(money.cost))]),
    ...(money?.price === undefined ? [] : [say(money.price)]),
  ];
}

/** The figures in a bar that stays in sight on a phone; decoration, since they stand above. */
function footView(context: KitsContext): TemplateResult {
  return html`<div class="foot" aria-hidden="true">
    ${listFigures(context).map((said) => html`<span>${said}</span>`)}
  </div>`;
}

/** One sentence for those who hear the page, when an answer is ready. */
function sayReady(context: KitsContext): string {
  const { isBusy, faults, answer } = context.state;
  if (isBusy || answer === undefined || faults.length > 0) return '';
  return context.words.ready(listFigures(context).join(', ') || context.words.result.none);
}
