import { html, nothing, type TemplateResult } from 'lit';
import type { ShownStash, ShownStashOption } from '../../data/stash-answer-schema.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { drawOption, drawSmall } from './draw-option.ts';
import { figureView, type StashContext, sayLength } from './stash-context.ts';
import { findOption, nameOption } from './stash-state.ts';

/** The quilt that is worked out: its figures, its picture, and what keeps it from being larger. */
export function quiltView(
  context: StashContext,
  option: ShownStashOption | undefined,
): TemplateResult {
  const { state, words } = context;
  if (option === undefined || state.answer === undefined) return noneView(context);
  const { columns, rows, washed, sewn, cut, limitedBy, layout } = option;
  const size = sayLength(context, washed.width, washed.height);
  const figures = [
    [words.figures.washed, figureView(size)],
    [
      words.figures.blocks,
      html`<b>${columns} × ${rows}</b> <small>${words.figures.each} ${sayLength(context, cut)}</small>`,
    ],
  ];
  return html`<section class="quilt stack" part="drawing" aria-label=${words.result}>
    <dl class="figures" part="figures">
      ${figures.map(([name, figure]) => html`<div><dt>${name}</dt><dd>${figure}</dd></div>`)}
    </dl>
    ${drawingView(drawOption(option, state.answer), 'picture', words.drawing(columns, rows, size))}
    <p>
      ${words.limited(limitedBy)}
      <span class="soft">${words.sewn(sayLength(context, sewn.width, sewn.height))} ${words.touching(layout.touching.sides, layout.touching.corners)}</span>
    </p>
    ${planLink(context, state.answer, option)}
  </section>`;
}

/** Leads to the page that plans the same quilt whole. */
function planLink({ words }: StashContext, answer: ShownStash, option: ShownStashOption) {
  const counts = new Map<string, number>();
  for (const letter of option.layout.cells.join('')) {
    const print = option.layout.prints[letter.charCodeAt(0) - 65] ?? '';
    counts.set(print, (counts.get(print) ?? 0) + 1);
  }
  const prints = [...counts].flatMap(([id, count], at) => [
    [`layers.0.prints.${at}.id`, id],
    [`layers.0.prints.${at}.count`, `${count}`],
  ]);
  const query = new URLSearchParams([
    ['unit', answer.input.unit],
    ['target.columns', `${option.columns}`],
    ['target.rows', `${option.rows}`],
    ['block.cut', `${option.cut}`],
    ['block.seam', `${answer.input.block.seam}`],
    ['layers.0.role', 'top'],
    ...prints.map(([path = '', value = '']) => [path, value]),
    ['layers.1.role', 'backing'],
  ]);
  return html`<a class="go off" href="/?${query}">${words.plan}</a>`;
}

function noneView({ state, words }: StashContext): TemplateResult {
  const said = state.answer === undefined ? words.empty : words.small;
  return html`<section class="stack" part="drawing" aria-label=${words.result}>
    <p class="waiting">${state.isBusy ? nothing : said}</p>
  </section>`;
}

/** Other quilts of the same cloth, as small drawings to choose from. */
export function othersView(context: StashContext): TemplateResult | typeof nothing {
  const { state, words, act } = context;
  const { answer } = state;
  if (answer === undefined || answer.options.length < 2) return nothing;
  const chosen = findOption(state);
  return html`<section class="stack" part="options">
    <h2>${words.others}</h2>
    <div class="options">
      ${answer.options.map(
        (option) => html`<button
          aria-pressed=${option === chosen ? 'true' : 'false'}
          @click=${() => act.choose(nameOption(option))}
        >
          ${drawingView(drawSmall(option, answer))}
          <span>
            <b>${sayLength(context, option.washed.width, option.washed.height)}</b>
            <small>${option.columns} × ${option.rows}, ${words.figures.each} ${sayLength(context, option.cut)}</small>
          </span>
        </button>`,
      )}
    </div>
  </section>`;
}
