import { html, nothing, type TemplateResult } from 'lit';
import type { Pair } from '#core/contract.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { drawBeforeAfter, guessGrid } from './draw-before-after.ts';
import { findSizes, linkPlan, type SizeAfter, type Sizes } from './find-sizes.ts';
import { sayLength, sayPercent, shrinkOf, type WashContext } from './wash-context.ts';

/** A difference this small is not worth a word: a sixteenth of an inch, a millimetre. */
const SLIGHT = { in: 1 / 16, cm: 0.1 };
/** Face of a block to draw where nobody said how many there are. */
const FACE = { in: 6.5, cm: 17 };

/** The quilt before and after at scale, what to sew for the size wanted, and the sizes wash by wash. */
export function resultView(context: WashContext, answer: ShownWash): TemplateResult {
  const { words } = context;
  const sizes = findSizes(answer);
  if (sizes === undefined) return percentView(context, answer);
  const shown = sizes.after[context.state.shown] ?? sizes.after[0];
  if (shown === undefined) return html``;
  return html`<section class="stack" part="drawing" aria-label=${words.result.label}>
    ${figuresView(context, answer, { sizes, shown })}
    ${pictureView(context, answer, { sizes, shown })}
    ${nearestView(context, answer)}
    ${tableView(context, sizes)}
    <p class="soft">${sayHalving(context, answer)}</p>
  </section>`;
}

interface Shown {
  readonly sizes: Sizes;
  readonly shown: SizeAfter;
}

/** A figure set large with its unit small. */
function figure(said: string): TemplateResult {
  const at = said.indexOf('\u00a0');
  return html`<b>${said.slice(0, at)}</b><small>${said.slice(at)}</small>`;
}

function sayPair(context: WashContext, { width, height }: Pair): string {
  return sayLength(context, width, height);
}

function figuresView(context: WashContext, answer: ShownWash, { sizes, shown }: Shown) {
  const { words } = context;
  const isWanted = answer.input.sewn === undefined;
  const off = {
    width: (shown.high.width - shown.low.width) / 2,
    height: (shown.high.height - shown.low.height) / 2,
  };
  const figures = [
    [isWanted ? words.result.sew : words.result.sewn, sayPair(context, sizes.sewn)],
    [words.result.after(shown.washes), sayPair(context, shown.washed)],
    [words.result.either, sayPair(context, off)],
  ] as const;
  return html`<dl class="figures" part="figures">
    ${figures.map(([name, said]) => html`<div><dt>${name}</dt><dd>${figure(said)}</dd></div>`)}
  </dl>`;
}

function pictureView(context: WashContext, answer: ShownWash, { sizes, shown }: Shown) {
  const { words, unit, state, act } = context;
  const drawing = drawBeforeAfter({
    unit,
    grain: answer.input.grain,
    grid: sizes.grid ?? guessGrid(sizes.sewn, FACE[unit]),
    seam: answer.input.block.seam,
    sewn: sizes.sewn,
    ...shown,
  });
  const label = words.result.drawing(sayPair(context, sizes.sewn), sayPair(context, shown.washed));
  const counts = choiceChips<string>({
    name: 'shown',
    legend: words.result.shown,
    choices: sizes.after.map(({ washes }, index) => [`${index}`, `${washes}`]),
    chosen: `${state.shown < sizes.after.length ? state.shown : 0}`,
    onChoose: (index) => act.show(Number(index)),
  });
  const { keys } = words.result;
  return html`${drawingView(drawing, 'picture', label)}
    <div class="chips caption">
      ${counts}
      <p class="keys soft">
        <span class="key dashed">${keys.sewn}</span>
        <span class="key solid">${keys.doubt}</span>
      </p>
    </div>`;
}

function nearestView(context: WashContext, answer: ShownWash): TemplateResult | typeof nothing {
  const { words } = context;
  const { sewFor } = answer;
  if (sewFor === undefined || answer.input.sewn !== undefined) return nothing;
  const { nearest } = sewFor;
  const exact = words.result.exact(sayPair(context, sewFor));
  const link = linkPlan(answer);
  return html`<div class="stack nearest">
    ${
      nearest === undefined
        ? nothing
        : html`<p>
            <b>${words.result.nearest(nearest.columns, nearest.rows, sayLength(context, nearest.cut))}</b>
            ${words.result.nearestSize(sayPair(context, nearest.sewn), sayPair(context, nearest.washed), sayFit(context, nearest.fit))}
          </p>`
    }
    <p class="soft">${exact}</p>
    ${link === undefined ? nothing : html`<a class="go off" href=${link}>${words.result.plan}</a>`}
  </div>`;
}

function sayFit(context: WashContext, fit: Pair): string {
  const { words, unit } = context;
  const say = (value: number, [more, less, same]: readonly [string, string, string]) =>
    Math.abs(value) < SLIGHT[unit]
      ? same
      : `${sayLength(context, Math.abs(value))} ${value > 0 ? more : less}`;
  return `${say(fit.width, words.result.fit.width)}, ${say(fit.height, words.result.fit.height)}`;
}

function tableView(context: WashContext, { after }: Sizes): TemplateResult {
  const { unit, words } = context;
  const say = (pair: Pair) => sayPair(context, pair).replace(`\u00a0${unit}`, '');
  return rowsView(
    words.result.columns(unit),
    after.map(({ washes, washed, low, high }) => [washes, say(washed), say(low), say(high)]),
  );
}

/** Without a size there are percentages to tell of still. */
function percentView(context: WashContext, { sandwich }: ShownWash): TemplateResult {
  const { words } = context;
  const say = ({ width, height }: Pair) =>
    `${sayPercent(context, shrinkOf(width))}, ${sayPercent(context, shrinkOf(height))}`;
  return html`<section class="stack" part="drawing" aria-label=${words.result.label}>
    ${rowsView(
      words.result.percentColumns,
      sandwich.map(({ washes, change, low, high }) => [washes, say(change), say(high), say(low)]),
    )}
  </section>`;
}

function rowsView(
  heads: readonly string[],
  rows: readonly (readonly [washes: number, ...said: string[]])[],
): TemplateResult {
  return html`<table class="sizes">
    <thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
    <tbody>
      ${rows.map(
        ([washes, ...said]) => html`<tr>
          <th scope="row">${washes}</th>
          ${said.map((cell, index) => html`<td>${index === 0 ? html`<b>${cell}</b>` : cell}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function sayHalving({ words }: WashContext, { doubt }: ShownWash): string {
  return doubt.blocks === undefined ? words.result.noHalve : words.result.halve(doubt.blocks);
}
