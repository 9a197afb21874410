import { html, type TemplateResult } from 'lit';
import type { ShownPlan } from '../../data/plan-answer-schema.ts';
import type { PlanContext } from './plan-context.ts';

/** What a step needs beside its sentences: the stacks with their blocks, or the rows as they are laid. */
export function workDetails(
  { text }: PlanContext,
  { work }: ShownPlan,
  step: string,
): TemplateResult | undefined {
  if (step === 'stack' && work.stacks.length > 1) {
    return html`<ul class="heaps">
      ${work.stacks.map(({ letter, blocks }) => html`<li><b>${letter}</b> ${blocks}</li>`)}
    </ul>`;
  }
  if (step !== 'join') return undefined;
  return html`<ul class="heaps rows">
    ${work.rows.map(
      ({ name, blocks }) =>
        html`<li>${text.checklist.row(name)} <b>${[...blocks].join(' ')}</b></li>`,
    )}
  </ul>`;
}
