import { html, type TemplateResult } from 'lit';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import { drawThumbnail } from '#core/drawing/draw-thumbnail.ts';
import type { ShownOption, ShownPlan } from '../../data/is-plan-answer.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { foldView } from '../../fields/fold-view.ts';
import { writeHours, writeMeasure } from '../../fields/write-figures.ts';
import { figureView, type PlanContext, sayLength } from './plan-context.ts';
import { stateChips } from './plan-fields.ts';

/** A difference this small is not worth a word: a sixteenth of an inch, a millimetre. */
const SLIGHT = { in: 1 / 16, cm: 0.1 };
/** Other plans that are in sight before anybody asks for more. */
const FIRST = 6;

/** The quilt to scale, the figures that matter above it, how it fits the wish and what else would fit below. */
export function quiltView(context: PlanContext, answer: ShownPlan): TemplateResult {
  const { state, text, act } = context;
  const { columns, rows } = answer.grid;
  const { width, height } = answer.size[state.shown];
  const size = sayLength(context, width, height);
  const { low, high } = answer.size.washed;
  const states = stateChips(context, {
    name: 'shown',
    legend: text.plan,
    quiet: true,
    chosen: state.shown,
    onChoose: act.show,
  });
  const blocks = html`<b>${columns} × ${rows}</b>
    <small>${text.figures.each} ${sayLength(context, answer.block.cut)}</small>`;
  const figures = [
    [text.states[state.shown], figureView(size)],
    [text.figures.blocks, blocks],
    [text.figures.cloth, figureView(sayCloth(context, answer))],
    [text.figures.work, figureView(writeHours(answer.time.total))],
  ];
  return html`<section class="quilt stack" part="drawing" aria-label=${text.plan}>
    <dl class="figures" part="figures">
      ${figures.map(([name, figure]) => html`<div><dt>${name}</dt><dd>${figure}</dd></div>`)}
    </dl>
    ${drawingView(drawQuilt(answer, state.shown), 'picture', text.drawing(columns, rows, size))}
    <div class="chips caption">
      ${states}
      <p>
        ${sayFit(context, answer)}
        <span class="soft">${text.between(sayLength(context, low.width, low.height), sayLength(context, high.width, high.height))}</span>
      </p>
    </div>
  </section>`;
}

/** All the cloth to buy, with its unit. */
export function sayCloth({ text }: PlanContext, { fabrics, thread }: ShownPlan): string {
  const amount = fabrics.reduce((sum, { buy }) => sum + buy.amount, 0);
  return writeMeasure(text.language, thread.unit, amount);
}

/** Three of the figures, as they are said in one breath. */
export function listFigures(context: PlanContext, answer: ShownPlan): readonly string[] {
  const { width, height } = answer.size.washed;
  return [
    sayLength(context, width, height),
    sayCloth(context, answer),
    writeHours(answer.time.total),
  ];
}

/** Those figures in a bar that stays in sight on a phone; decoration, since they stand above. */
export function footView(context: PlanContext, answer: ShownPlan): TemplateResult {
  return html`<div class="foot" aria-hidden="true">
    ${listFigures(context, answer).map((figure) => html`<span>${figureView(figure)}</span>`)}
  </div>`;
}

function sayFit(context: PlanContext, { fit, input }: ShownPlan): string {
  const { text, said } = context;
  if (input.target.columns !== undefined) return '';
  const say = (value: number, [more, less, same]: readonly [string, string, string]) =>
    Math.abs(value) < SLIGHT[said]
      ? same
      : `${sayLength(context, Math.abs(value))} ${value > 0 ? more : less}`;
  return `${say(fit.width, text.fit.width)}, ${say(fit.height, text.fit.height)}.`;
}

/** Other plans that fit, as small drawings to choose from, the best ones and the one on the table first in sight. */
export function optionsView(context: PlanContext, answer: ShownPlan): TemplateResult {
  const { text } = context;
  const list = (isRest: boolean) => html`<div class="options">
    ${answer.options
      .filter(({ chosen }, index) => (index >= FIRST && !chosen) === isRest)
      .map((option) => optionView(context, answer, option))}
  </div>`;
  return html`<section class="stack" part="options">
    <h2 class="off">${text.others}</h2>
    ${list(false)}
    ${answer.options.length > FIRST ? foldView({ title: text.moreOthers, body: list(true) }) : ''}
  </section>`;
}

function optionView(context: PlanContext, answer: ShownPlan, option: ShownOption): TemplateResult {
  const { text, act } = context;
  return html`<button
    aria-pressed=${option.chosen ? 'true' : 'false'}
    @click=${() => act.choose(option)}
  >
    ${drawingView(drawThumbnail(option, answer))}
    <span>
      <b>${sayLength(context, option.washed.width, option.washed.height)}</b>
      <small>${option.columns} × ${option.rows}, ${text.figures.each} ${sayLength(context, option.cut)}</small>
      <small>${writeMeasure(text.language, answer.thread.unit, option.fabric)}, ${writeHours(option.minutes)}</small>
    </span>
  </button>`;
}
