import { html, type TemplateResult } from 'lit';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import type { ShownWork } from '../../data/holds-work.ts';
import type { HandOut } from './hand-out-sheet.ts';
import type { PlanContext } from './plan-context.ts';
import { sayCaution } from './say-caution.ts';

/** What to take care of, the gravest first. */
export function heedView(context: PlanContext, { plan, words }: HandOut): TemplateResult {
  const { text } = context;
  return html`<div class="heed">
    <h2>${words.sheet.care}</h2>
    ${listCautions(plan).map(
      (caution) => html`<p class=${caution.severity}>
        <b>${text.severities[caution.severity]}.</b> ${typesetFractions(sayCaution(context, plan, caution))}
      </p>`,
    )}
  </div>`;
}

/** What is dangerous or wants care, what a step warns of, and that a baby does not sleep under a quilt. */
function listCautions({ cautions, steps }: ShownWork): ShownWork['cautions'] {
  const named = new Set(['infant-sleep', ...steps.flatMap((step) => step.cautions)]);
  return cautions.filter(({ code, severity }) => severity !== 'note' || named.has(code));
}
