import { html, type TemplateResult } from 'lit';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import type { PlanContext } from './plan-context.ts';

type Caution = ShownPlan['cautions'][number];

/** What says a caution. */
export type SayCaution = (context: PlanContext, answer: ShownPlan, caution: Caution) => string;

/** Which cautions, and what says them. */
export interface CautionsList {
  readonly severity: Caution['severity'];
  readonly say: SayCaution;
}

/** Cautions of one kind. */
export function cautionsList(
  context: PlanContext,
  answer: ShownPlan,
  { severity, say }: CautionsList,
): TemplateResult {
  const word = context.text.severities[severity];
  return html`<ul class="lines">
    ${answer.cautions
      .filter((caution) => caution.severity === severity)
      .map(
        (caution) => html`<li class=${severity}>
          ${severity === 'note' ? '' : html`<strong>${word}.</strong>`}
          ${typesetFractions(say(context, answer, caution))}
          <small lang="en">${caution.source}</small>
        </li>`,
      )}
  </ul>`;
}
