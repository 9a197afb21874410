import { html, nothing, type TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import { findSizes } from './find-sizes.ts';
import { sayFault, sayLength, sayPercent, shrinkOf, type WashContext } from './wash-context.ts';
import { hasNoField } from './wash-state.ts';
import { adviceView, defaultsView, groundsView } from './wash-view-advice.ts';
import { courseView } from './wash-view-course.ts';
import { markingView, swatchSheetView } from './wash-view-marking.ts';
import { quiltView } from './wash-view-quilt.ts';
import { resultView } from './wash-view-result.ts';
import { swatchesView } from './wash-view-swatches.ts';

/** The whole element from its state: what was measured on one side, what comes of it on the other. */
export function washView(context: WashContext, hasFoot: boolean): TemplateResult {
  const { state, text, words, act } = context;
  const { answer, faults, isBusy, isSheet, trouble } = state;
  return html`<div class="table ${isBusy ? 'busy' : ''} ${isSheet ? 'sheet-only' : ''}">
      <div class="wide off" role="alert">${noticesView(context)}</div>
      <div class="part">${swatchesView(context)}${quiltView(context)}</div>
      <div class="part">
        <div class="off" role="alert">
          ${answer === undefined || (faults.length === 0 && trouble === undefined) ? nothing : noticeView(words.stale)}
        </div>
        ${
          answer === undefined
            ? html`<div class="waiting"></div>`
            : [
                resultView(context, answer),
                courseView(context, answer),
                adviceView(context, answer),
              ]
        }
        ${markingView(context)}
        <div>
          ${defaultsView(context)}${answer && groundsView(context, answer)}
        </div>
        <button @click=${act.print}>${text.print}</button>
      </div>
      <p class="hidden" role="status" aria-atomic="true">${sayReady(context)}</p>
      ${answer && hasFoot ? footView(context, answer) : nothing}
    </div>
    ${isSheet ? swatchSheetView(context) : nothing}`;
}

function noticeView(body: unknown): TemplateResult {
  return html`<div class="notice">${body}</div>`;
}

/** What stands between the swatches and an answer; the region is there before anything is said in it. */
function noticesView(context: WashContext): readonly unknown[] {
  const { state, text, act } = context;
  const { faults, hostFaults, answer } = state;
  const others = faults.filter(hasNoField);
  const notice = (isSo: boolean, body: unknown) => (isSo ? noticeView(body) : nothing);
  return [
    notice(hostFaults.length > 0, [text.host, listView(context, hostFaults)]),
    notice(others.length > 0, listView(context, others)),
    notice(state.trouble !== undefined, [
      state.trouble && context.light.trouble[state.trouble],
      html`<button @click=${act.retry}>${text.retry}</button>`,
    ]),
    notice(state.from === 'device' && answer !== undefined, text.device),
  ];
}

function listView(context: WashContext, faults: readonly Fault[]): TemplateResult {
  return html`<ul>
    ${faults.map(
      (fault) => html`<li>${sayFault(context, fault)} <small>${fault.path.join('.')}</small></li>`,
    )}
  </ul>`;
}

/** What to sew and what comes of it, in a bar that stays in sight on a phone; decoration, since it stands above. */
function footView(context: WashContext, answer: ShownWash): TemplateResult {
  return html`<div class="foot" aria-hidden="true">
    ${listFigures(context, answer).map((said) => html`<span>${said}</span>`)}
  </div>`;
}

function listFigures(context: WashContext, answer: ShownWash): readonly string[] {
  const { words } = context;
  const sizes = findSizes(answer);
  const first = sizes?.after[0];
  if (sizes === undefined || first === undefined) return listShrinks(context, answer);
  const name = answer.input.sewn === undefined ? words.result.sew : words.result.sewn;
  return [
    `${name} ${sayLength(context, sizes.sewn.width, sizes.sewn.height)}`,
    `→ ${sayLength(context, first.washed.width, first.washed.height)}`,
  ];
}

/** Without a size, how much the quilt shrinks at the first of the wash counts. */
function listShrinks(context: WashContext, { sandwich }: ShownWash): readonly string[] {
  const [first] = sandwich;
  if (first === undefined) return [];
  const { width, height } = first.change;
  const said = [width, height].map((change) => sayPercent(context, shrinkOf(change)));
  return [`${context.words.result.shrink} ${said.join(' × ')}`, context.words.times(first.washes)];
}

/** One sentence for those who hear the page, when an answer is ready. */
function sayReady(context: WashContext): string {
  const { answer, isBusy, faults } = context.state;
  if (isBusy || answer === undefined || faults.length > 0) return '';
  return context.words.ready(listFigures(context, answer).join(' '));
}
