import { html, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { drawStep } from '#core/drawing/steps/draw-step.ts';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { holdsWork, type ShownWork } from '../../data/holds-work.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { checkBox } from '../../fields/check-box.ts';
import { writeTime } from '../../fields/write-time.ts';
import { chooseLanguage, loadText } from '../../text/languages.ts';
import { type WorkWords, workSource } from '../../text/work/source.ts';
import { countLeft } from './count-left.ts';
import { FOCUS_STYLES } from './focus-styles.ts';
import type { Aside } from './open-aside.ts';
import { openDialog } from './open-dialog.ts';
import type { MakingContext } from './plan-context.ts';
import { sayCaution } from './say-caution.ts';
import { sayStep } from './say-step.ts';
import { workDetails } from './work-details.ts';

/** Shows the steps one by one, from the first that is not done. */
export async function startFocus({
  text,
  state,
}: Pick<MakingContext, 'text' | 'state'>): Promise<Aside> {
  const words = await loadText(workSource, chooseLanguage([text.language]));
  const steps = state.answer?.steps ?? [];
  const at = Math.max(
    0,
    steps.findIndex(({ id }) => !state.done.includes(id)),
  );
  return (context, answer) => focusView(context, answer, { words, at });
}

/** Which step is shown, and the words around it. */
interface Sight {
  readonly words: WorkWords;
  readonly at: number;
}

const dress = (element?: Element) => openDialog(element, FOCUS_STYLES);
const closeAbove = ({ target }: Event) => (target as Element).closest('dialog')?.close();

/** One step over the whole screen. */
function focusView(
  context: MakingContext,
  answer: ShownPlan,
  { words, at }: Sight,
): TemplateResult {
  const { state, text, act } = context;
  const { steps } = answer;
  const step = steps[at];
  const turn = (to: number) => {
    if (steps[to] !== undefined) act.lay((now, plan) => focusView(now, plan, { words, at: to }));
  };
  const left = writeTime(text.language, countLeft(steps, state.done));
  const finish = (event: Event) => {
    if (step !== undefined && !state.done.includes(step.id)) act.tick(step.id);
    if (at === steps.length - 1) closeAbove(event);
    else turn(at + 1);
  };
  const press = ({ key, target }: KeyboardEvent) => {
    if ((target as Element).matches('[type=checkbox]')) return;
    if (key === 'ArrowRight' || key === 'PageDown') turn(at + 1);
    if (key === 'ArrowLeft' || key === 'PageUp') turn(at - 1);
  };
  return html`<dialog
    class="focus"
    aria-label=${words.focus.title}
    ${ref(dress)}
    @close=${() => act.lay()}
    @keydown=${press}
  >
    <header>
      <span role="status"><b>${words.focus.step(at + 1, steps.length)}</b><span class="hidden">: ${step && sayStep(context, step)[0]}</span></span>
      <span>${text.checklist.left(left)}</span>
      <button @click=${closeAbove}>${words.focus.close}</button>
    </header>
    <div class="sight" tabindex="0" role="region" aria-label=${words.focus.step(at + 1, steps.length)}>
      ${step && stepView(context, answer, { words, at })}
    </div>
    <div class="turn">
      <button ?disabled=${at === 0} @click=${() => turn(at - 1)}>${words.focus.back}</button>
      <button class="go" autofocus @click=${finish}>
        ${at === steps.length - 1 ? words.focus.last : words.focus.next}
      </button>
    </div>
  </dialog>`;
}

function stepView(context: MakingContext, answer: ShownPlan, { words, at }: Sight): unknown {
  const step = answer.steps[at];
  if (step === undefined) return undefined;
  const [what, detail] = sayStep(context, step);
  const drawing = holdsWork(answer) ? drawStep(step.id, answer) : undefined;
  return html`${drawing && html`<div class="picture-of-step">${drawingView(drawing)}</div>`}
    <h2>${typesetFractions(what)}</h2>
    <p>${typesetFractions(detail)}</p>
    ${workDetails(context, answer, step.id)}
    ${holdsWork(answer) ? cautionsView(context, answer, at) : ''}
    ${checkBox({
      label: words.focus.done,
      isOn: context.state.done.includes(step.id),
      onChange: () => context.act.tick(step.id),
    })}
    <p class="soft keys">${words.focus.keys}</p>`;
}

/** The cautions of the plan that count at one step. */
function cautionsView(context: MakingContext, answer: ShownWork, at: number): unknown {
  const codes = answer.steps[at]?.cautions ?? [];
  return answer.cautions
    .filter(({ code }) => codes.includes(code))
    .map(
      (caution) => html`<p class="warn ${caution.severity}">
        <strong>${context.text.severities[caution.severity]}.</strong>
        ${typesetFractions(sayCaution(context, answer, caution))}
      </p>`,
    );
}
