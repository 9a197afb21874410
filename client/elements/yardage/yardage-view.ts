import { html, type TemplateResult } from 'lit';
import { noticesView } from '../../fields/notices-view.ts';
import { sayBought } from '../../fields/say-bought.ts';
import type { YardageContext } from './yardage-context.ts';
import { askView } from './yardage-view-ask.ts';
import { resultView } from './yardage-view-result.ts';

/** The whole element from its state: what is asked, and beside or below it what comes of that. */
export function yardageView(context: YardageContext): TemplateResult {
  const { status, words, act, odd } = context;
  const { answer, isBusy } = status;
  const isOld = answer !== undefined && (status.faults.length > 0 || status.trouble !== undefined);
  return html`<div class="table ${isBusy ? 'busy' : ''}">
    <section class="stack" part="ask">
      <slot name="title"><h2>${words.yardage.title}</h2></slot>
      ${askView(context)}
    </section>
    <div class="stack">
      ${noticesView({
        words: words.light,
        odd,
        trouble: status.trouble,
        isOld,
        from: answer && status.from,
        retry: act.retry,
      })}
      ${answer === undefined ? html`<div class="waiting"></div>` : resultView(context, answer)}
      <div><slot name="action"></slot><slot name="note"></slot></div>
      <p class="hidden" role="status" aria-atomic="true">${sayReady(context)}</p>
    </div>
  </div>`;
}

/** One sentence for those who hear the page, when there is an answer. */
function sayReady({ status, words }: YardageContext): string {
  const { answer, isBusy } = status;
  if (isBusy || answer === undefined) return '';
  const said = answer.fabrics.map(({ buy }) => sayBought(words.light.language, buy));
  return words.yardage.ready(said.join(', '));
}
