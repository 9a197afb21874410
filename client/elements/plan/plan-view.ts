import { html, type TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { cautionsList, type SayCaution } from './cautions-list.ts';
import { type PlanContext, sayFault } from './plan-context.ts';
import { listOtherFaults } from './plan-state.ts';
import { footView, listFigures, optionsView, quiltView } from './plan-view-quilt.ts';
import { wishView } from './plan-view-wish.ts';

/** The whole element from its state: what is asked on one side, what came of it on the other. */
export function planView(context: PlanContext, hasFoot: boolean): TemplateResult {
  const { answer, isBusy } = context.state;
  const below = context.state.below === 'missing' ? undefined : context.state.below;
  const canChoose = !context.isLocked('block.cut');
  return html`<div class="table ${isBusy ? 'busy' : ''}">
    <div class="part ask">${wishView(context)}</div>
    <div class="part see">
      ${noticesView(context)}
      ${
        answer === undefined
          ? html`<div class="waiting"></div>`
          : [
              quiltView(context, answer),
              cautionsList(context, answer, {
                severity: 'danger',
                say: below?.sayCaution ?? sayPlainly,
              }),
              canChoose ? optionsView(context, answer) : '',
            ]
      }
    </div>
    ${below ? below.view(context, hasFoot) : html`<div class="later"></div>`}
    <p class="hidden" role="status" aria-atomic="true">${sayPlan(context)}</p>
    ${answer && hasFoot ? footView(context, answer) : ''}
  </div>`;
}

/** A caution without the figures that it may name, which are written by what comes later. */
const sayPlainly: SayCaution = ({ cautions }, _, caution) =>
  cautions?.say(caution, {}) ?? caution.text;

/** What stands between the wish and a plan; the region is there before anything is said in it. */
function noticesView(context: PlanContext): TemplateResult {
  const { state, text, act } = context;
  const { faults, hostFaults, answer } = state;
  const missing = state.below === 'missing' ? 'silent' : undefined;
  const trouble = state.trouble ?? missing;
  const others = listOtherFaults(faults);
  const notice = (isSo: boolean, body: unknown) =>
    isSo ? html`<div class="notice">${body}</div>` : '';
  return html`<div class="off" role="alert">
    ${notice(hostFaults.length > 0, [text.host, listView(context, hostFaults)])}
    ${notice(others.length > 0, listView(context, others))}
    ${notice((faults.length > 0 || state.trouble !== undefined) && answer !== undefined, text.stale)}
    ${notice(trouble !== undefined, [
      trouble && text.light.trouble[trouble],
      html`<button @click=${act.retry}>${text.retry}</button>`,
    ])}
    ${notice(state.from === 'device' && answer !== undefined, text.device)}
  </div>`;
}

function listView(context: PlanContext, faults: readonly Fault[]): TemplateResult {
  return html`<ul>
    ${faults.map(
      (fault) => html`<li>${sayFault(context, fault)} <small>${fault.path.join('.')}</small></li>`,
    )}
  </ul>`;
}

/** One sentence for those who hear the page, when a plan is ready. */
function sayPlan(context: PlanContext): string {
  const { answer, isBusy } = context.state;
  if (isBusy || answer === undefined) return '';
  const { columns, rows } = answer.grid;
  return context.text.ready(columns, rows, listFigures(context, answer).join(', '));
}
