import { html, type TemplateResult } from 'lit';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { checkBox } from '../../fields/check-box.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { writeTime } from '../../fields/write-time.ts';
import { countLeft } from './count-left.ts';
import { openAside } from './open-aside.ts';
import type { MakingContext } from './plan-context.ts';
import { sayStep } from './say-step.ts';
import { workDetails } from './work-details.ts';

/** The work in order, each step with a box to tick, what is left of it, and the ways to see it alone or to hand it out. */
export function workView(context: MakingContext, answer: ShownPlan): TemplateResult {
  const { state, text } = context;
  const { steps } = answer;
  const words = text.checklist;
  const done = steps.filter(({ id }) => state.done.includes(id)).length;
  const left = countLeft(steps, state.done);
  return sheetView(
    'work',
    words.title,
    html`<div class="chips off">
        <button class="go" @click=${() => openFocus(context)}>${words.focus}</button>
        <button @click=${() => openHandOut(context)}>${words.handOut}</button>
      </div>
      <ol class="lines">${steps.map((step) => stepView(context, answer, step))}</ol>`,
    html`<span class="soft off">
      ${words.done(done, steps.length)}${left > 0 ? `, ${words.left(writeTime(text.language, left))}` : ''}
    </span>`,
  );
}

function stepView(
  context: MakingContext,
  answer: ShownPlan,
  step: ShownPlan['steps'][number],
): TemplateResult {
  const { id } = step;
  const [what, detail] = sayStep(context, step);
  return html`<li>
    ${checkBox({
      label: typesetFractions(what),
      isOn: context.state.done.includes(id),
      onChange: () => context.act.tick(id),
      describedBy: `step-${id}`,
    })}
    <p class="soft" id="step-${id}">${typesetFractions(detail)}</p>
    ${workDetails(context, answer, id)}
  </li>`;
}

function openFocus(context: MakingContext): Promise<void> {
  return openAside(context, async () => {
    const { startFocus } = await import('./focus-view.ts');
    return startFocus(context);
  });
}

function openHandOut(context: MakingContext): Promise<void> {
  return openAside(context, async () => {
    const { startHandOut } = await import('./hand-out.ts');
    return startHandOut(context);
  });
}
