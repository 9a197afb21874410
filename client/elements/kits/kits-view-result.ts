import { html, nothing, type TemplateResult } from 'lit';
import type { ShownKits } from '../../data/kits-answer-schema.ts';
import { writeMoney } from '../../data/money.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import { drawKit, listPrints } from './draw-kit.ts';
import { type KitsContext, sayLength } from './kits-context.ts';

/** How many kits there are, what one costs, and what is in each. */
export function resultView(context: KitsContext): TemplateResult {
  const { state, words } = context;
  const { answer } = state;
  const { result } = words;
  if (answer === undefined || answer.made === 0) return noneView(context);
  const { columns, rows } = answer.grid;
  return html`<section class="kits stack" part="drawing" aria-label=${result.title}>
    <dl class="figures" part="figures">
      ${listFigures(context, answer).map(
        ([name, figure, rest]) =>
          html`<div><dt>${name}</dt><dd><b>${figure}</b> <small>${rest}</small></dd></div>`,
      )}
    </dl>
    <p>
      ${result.limited(answer.limitedBy)}
      <span class="soft">${result.grid(columns, rows, sayLength(context, answer.cut))}</span>
    </p>
    ${buyView(context, answer)}
    <div class="groups">${answer.kits.map((group) => groupView(context, answer, group))}</div>
    <p class="soft">${listOthers(answer).map((role) => `${result.others(answer.squares, role)} `)}</p>
  </section>`;
}

function listFigures({ text, words }: KitsContext, { made, most, money }: ShownKits) {
  const { result } = words;
  const say = (minor: number) => writeMoney(text.language, money?.currency ?? '', minor);
  const figures: (readonly [string, string, string])[] = [
    [result.kits, `${made}`, made === most ? '' : result.most(most)],
  ];
  if (money !== undefined) figures.push([result.cost, say(money.cost), '']);
  if (money?.price !== undefined) figures.push([result.price, say(money.price), '']);
  return figures;
}

/** Roles that have squares in the kit beside the top, in the order of the bolts. */
function listOthers({ input }: ShownKits) {
  const roles = input.bolts.map(({ role }) => role).filter((role) => role !== 'top');
  return [...new Set(roles)];
}

/** What is to be bought for the kits that were wanted. */
function buyView({ text, words }: KitsContext, { input, buyMore = [] }: ShownKits) {
  if (buyMore.length === 0) return nothing;
  return html`<div class="notice">
    ${words.buy.title(input.kits ?? 0)}
    <ul>
      ${buyMore.map(({ role, print, squares, buy }) => {
        const name = print ?? words.buy.cloths[role];
        const amount = writeMeasure(text.language, buy.unit, buy.amount);
        return html`<li>${words.buy.line(amount, name, squares)}</li>`;
      })}
    </ul>
  </div>`;
}

/** Kits alike: a picture of their squares, and how many of which print. */
function groupView(
  { words }: KitsContext,
  answer: ShownKits,
  { count, prints }: ShownKits['kits'][number],
): TemplateResult {
  const order = listPrints(answer);
  const { result } = words;
  const said = prints.map(({ id, blocks }) => result.squares(blocks, id)).join(', ');
  return html`<div class="group">
    ${drawingView(drawKit(prints, order), 'kit', result.drawing(said))}
    <div>
      <b class="count">${result.group(count)}</b>
      <ul>
        ${prints.map(({ id, blocks }) => html`<li>${printSwatch(order.indexOf(id) % 26)} ${result.squares(blocks, id)}</li>`)}
      </ul>
    </div>
  </div>`;
}

function noneView({ state, words }: KitsContext): TemplateResult {
  const said = state.answer === undefined ? words.result.empty : words.result.noneOf;
  return html`<section class="stack" part="drawing" aria-label=${words.result.title}>
    <p class="waiting">${state.isBusy ? nothing : said}</p>
  </section>`;
}
