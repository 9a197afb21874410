import { html, type TemplateResult } from 'lit';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import type { MakingContext } from './plan-context.ts';

/** What stands over the plan for a while, such as one step alone. */
export type Aside = (context: MakingContext, answer: ShownPlan) => TemplateResult;

/** Fetches what is seldom wanted and lays it over the plan; says so where it cannot be had. */
export async function openAside(
  { act }: Pick<MakingContext, 'act'>,
  load: () => Promise<Aside>,
): Promise<void> {
  const missing: Aside = ({ text }) =>
    html`<p class="notice" role="alert">${text.checklist.missing}</p>`;
  act.lay(await load().catch(() => missing));
}
