import { html, nothing, type TemplateResult } from 'lit';
import { letterOf } from '#core/layout/letter-of.ts';
import type { ShownStash, ShownStashOption } from '../../data/stash-answer-schema.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { rollDrawings } from '../../drawing/roll-drawing.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { cutPieces } from './cut-piece.ts';
import { listPrints } from './draw-option.ts';
import { type StashContext, sayLength } from './stash-context.ts';

/** What to cut from each piece: a list, then a drawing of each piece to scale. */
export function cuttingView(context: StashContext, option: ShownStashOption): TemplateResult {
  const { state, words } = context;
  const { answer } = state;
  if (answer === undefined) return html``;
  const cut = sayLength(context, option.cut);
  const body = html`<p class="soft">${words.cuttingHow(cut)}</p>
    <table class="list">
      <thead>
        <tr>
          <th scope="col">${words.pieces}</th>
          <th scope="col">${words.squares}</th>
          <th scope="col">${words.left}</th>
        </tr>
      </thead>
      <tbody>
        ${answer.input.pieces.map((piece) => rowView(context, option, piece))}
      </tbody>
    </table>
    ${option.buy.map(({ role, blocks }) => html`<p><b>${words.buy(blocks, role, cut)}</b></p>`)}
    <div class="cuttings">${figuresView(context, option)}</div>`;
  return sheetView('cutting', words.cutting, body);
}

type Piece = ShownStash['input']['pieces'][number];

function rowView(context: StashContext, option: ShownStashOption, piece: Piece): TemplateResult {
  const { state, words } = context;
  const used = option.uses.find(({ id }) => id === piece.id)?.blocks ?? 0;
  const left = option.left.find(({ id }) => id === piece.id)?.rectangles ?? [];
  const said = left.map(({ width, length, count }) =>
    words.rectangle(count, sayLength(context, width, length)),
  );
  const at =
    piece.role === 'top' && state.answer ? listPrints(state.answer).indexOf(piece.print) : -1;
  return html`<tr>
    <th scope="row"><span class="swatch">${at < 0 ? nothing : printSwatch(at)} ${piece.id}</span></th>
    <td><b>${used}</b></td>
    <td>${said.join('; ') || words.nothingLeft}</td>
  </tr>`;
}

/** All that is cut, each piece a drawing, in one scale. */
function figuresView(context: StashContext, option: ShownStashOption) {
  const { words } = context;
  const sheets = option.uses.flatMap((use) => listSheets(context, option, use));
  const drawings = rollDrawings(sheets.map(({ roll }) => roll));
  return sheets.map(({ name, size, squares, isAlong }, at) => {
    const drawing = drawings[at];
    const label = words.sheet(name, size, squares);
    return html`<figure>
      ${drawing && drawingView(drawing, 'cut', label)}
      <figcaption>
        <b>${name}</b> <small>${words.sheetText(size, squares)} ${isAlong ? words.along : nothing}</small>
      </figcaption>
    </figure>`;
  });
}

/** The pieces of one row of the table that are cut, those alike together. */
function listSheets(
  context: StashContext,
  { cut }: ShownStashOption,
  { id, blocks }: ShownStashOption['uses'][number],
) {
  const { answer } = context.state;
  const piece = answer?.input.pieces.find((one) => one.id === id);
  if (answer === undefined || piece === undefined) return [];
  const { unit, squaring, usable } = answer.input;
  const at = piece.role === 'top' ? listPrints(answer).indexOf(piece.print) : -1;
  const letter = at < 0 ? '' : letterOf(at);
  const sheets = cutPieces({ ...piece, unit, squaring, usable, cut, squares: blocks, letter });
  const size = sayLength(context, piece.width, piece.length);
  return sheets.map(({ count, ...sheet }) => {
    const isOne = count === 1 && sheets.length === 1;
    return { ...sheet, size, name: isOne ? id : `${count} × ${id}` };
  });
}

/** Cautions, and what was taken for granted. */
export function groundsView({
  state,
  text,
  words,
  cautions: { say },
}: StashContext): TemplateResult {
  const { cautions = [], assumptions = [] } = state.answer ?? {};
  const warned = html`<ul class="lines">
    ${cautions.map(
      (caution) => html`<li class=${caution.severity}>
        <strong>${text.severities[caution.severity]}.</strong> ${say(caution, {})}
        ${caution.source && html`<small lang="en">${caution.source}</small>`}
      </li>`,
    )}
  </ul>`;
  return html`${sheetView('cautions', words.cautions, warned)}
    <details part="grounds">
      <summary>${words.assumptions}</summary>
      <ul class="lines" lang="en">
        ${assumptions.map(
          ({ path, value, why, source }) =>
            html`<li>${why}: <b>${value}</b> <small>${path}${source && `, ${source}`}</small></li>`,
        )}
      </ul>
    </details>`;
}
