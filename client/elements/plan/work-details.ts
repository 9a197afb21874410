import { html, type TemplateResult } from 'lit';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { foldView } from '../../fields/fold-view.ts';
import type { MakingContext } from './plan-context.ts';

/** More rows than this are folded away. */
const FEW = 12;

/** What a step needs beside its sentences: the stacks with their blocks, or the rows as they are laid. */
export function workDetails(
  { text }: MakingContext,
  { work }: ShownPlan,
  step: string,
): TemplateResult | undefined {
  if (step === 'stack' && work.stacks.length > 1) {
    return html`<ul class="heaps">
      ${work.stacks.map(({ letter, blocks }) => html`<li><b>${letter}</b> ${blocks}</li>`)}
    </ul>`;
  }
  if (step !== 'join') return undefined;
  const rows = html`<ul class="heaps rows">
    ${work.rows.map(
      ({ name, blocks }) =>
        html`<li>${text.checklist.row(name)} <b>${[...blocks].join(' ')}</b></li>`,
    )}
  </ul>`;
  if (work.rows.length <= FEW) return rows;
  const title = `${text.checklist.row('A')} – ${work.rows.at(-1)?.name}`;
  return foldView({ title, body: rows });
}
