import { html, type TemplateResult } from 'lit';
import { drawStep } from '#core/drawing/steps/draw-step.ts';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import type { ShownWork } from '../../data/holds-work.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { heedView } from './hand-out-heed.ts';
import type { HandOut } from './hand-out-sheet.ts';
import type { MakingContext } from './plan-context.ts';
import { sayStep } from './say-step.ts';

/** The second page: every step with its drawing and its figures, and the cautions. */
export function stepsLeaf(context: MakingContext, handOut: HandOut): TemplateResult {
  const { plan, words } = handOut;
  return html`<div class="leaf">
    <h2>${words.sheet.steps}</h2>
    <div class="deeds">${plan.steps.map((_, at) => stepView(context, plan, at))}</div>
    ${heedView(context, handOut)}
  </div>`;
}

function stepView(context: MakingContext, plan: ShownWork, at: number): TemplateResult | undefined {
  const step = plan.steps[at];
  if (step === undefined) return undefined;
  const drawing = drawStep(step.id, plan);
  const [what, detail] = sayStep(context, step);
  return html`<div class="deed ${drawing ? '' : 'plain'}">
    ${drawing && drawingView(drawing)}
    <div>
      <h3>${at + 1}. ${typesetFractions(what)}</h3>
      <p>${typesetFractions(detail)}</p>
    </div>
  </div>`;
}
