import { html, type TemplateResult } from 'lit';
import { drawFloor } from '#core/drawing/steps/draw-floor.ts';
import { sayMeasure } from '#core/drawing/steps/say-measure.ts';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { toMillimetres } from '#core/length.ts';
import { writeGap } from '#core/write-length.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { writeHours, writeMeasure } from '../../fields/write-figures.ts';
import { type ClothGroup, groupCloth } from './group-cloth.ts';
import type { HandOut } from './hand-out-sheet.ts';
import { type MakingContext, sayLength } from './plan-context.ts';

/** With more rows than this the list stands in two columns. */
const CROWD = 24;

/** The first page: what it will be, where each print goes, and what to bring. */
export function bringLeaf(context: MakingContext, handOut: HandOut): TemplateResult {
  const { plan, wish, words } = handOut;
  const rows = groupCloth(plan, handOut.all);
  return html`<div class="leaf ${rows.length > CROWD ? 'crowd' : ''}">
    <h1>${wish.heading}</h1>
    ${wish.note && html`<p class="own-note">${wish.note}</p>`}
    <div class="lead">
      <div>
        <h2>${words.sheet.where}</h2>
        ${drawingView(drawFloor(plan))}
        <small>${words.sheet.whereText}</small>
      </div>
      <div><h2>${words.sheet.sizes}</h2>${sizesView(context, handOut)}</div>
    </div>
    <div><h2>${words.sheet.list}</h2><div class="lists">${listView(context, handOut, rows)}</div></div>
    <p>${words.sheet.bought} ${words.sheet.also}</p>
  </div>`;
}

/** Sizes as they are set on a ruler; what is left before the seam is never overstated. */
function sizesView(context: MakingContext, { plan, words: { sheet } }: HandOut): TemplateResult {
  const { grid, block, size, time, weight } = plan;
  const { text, said: unit } = context;
  const set = (length: number) => sayMeasure(toMillimetres(length, unit), unit);
  const gap = typesetFractions(writeGap(toMillimetres(block.clearance, unit), unit));
  const facts = [
    [sheet.blocks, sheet.blocksText(grid.columns, grid.rows, grid.columns * grid.rows)],
    [sheet.cut, set(block.cut)],
    [sheet.seam, set(block.seam)],
    [sheet.snips, sheet.snipsText(set(block.snipDepth), set(block.snipPitch))],
    [sheet.clearance, gap],
    [sheet.sewn, sayLength(context, size.sewn.width, size.sewn.height)],
    [sheet.washed, sayLength(context, size.washed.width, size.washed.height)],
    [sheet.work, writeHours(time.total)],
    [sheet.weight, writeMeasure(text.language, weight.unit, weight.dry)],
  ];
  return html`<dl>${facts.map(([name, said]) => html`<dt>${name}</dt><dd>${said}</dd>`)}</dl>`;
}

function listView(
  context: MakingContext,
  handOut: HandOut,
  rows: readonly ClothGroup[],
): TemplateResult {
  const { plan, words, all } = handOut;
  const { sheet } = words;
  const cut = sayMeasure(toMillimetres(plan.block.cut, context.said), context.said);
  return html`<table class="bring">
    <thead>
      <tr>
        <th scope="col">${sheet.cloth}</th>
        <th scope="col">${sheet.squares(cut)}</th>
        <th scope="col">${sheet.each}</th>
        <th scope="col">${sheet.all(all.pupils)}</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map((row) => clothRow(context, words, row))}
    </tbody>
    <tbody>
      ${listRest(context, handOut).map(
        ([name, each, whole]) => html`<tr>
          <th scope="row">${name}</th><td></td><td>${each}</td><td>${whole}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function clothRow(
  context: MakingContext,
  words: HandOut['words'],
  row: ClothGroup,
): TemplateResult {
  const kind = row.isWordy ? 'wordy' : '';
  return html`<tr>
    <th scope="row">${nameCloth(context, words, row)}</th>
    <td>${row.squares}</td>
    <td class=${kind}>${sayBuy(context, words, row.each)}</td>
    <td class=${kind}>${sayBuy(context, words, row.all)}</td>
  </tr>`;
}

/**
 * The letters of the prints with their names where they have some, or the fabric and what it is for. Where a row is of
 * several prints, what it tells is for each of them, and it says so.
 */
function nameCloth(
  { text }: MakingContext,
  { sheet }: HandOut['words'],
  { role, fabric, prints }: ClothGroup,
): string {
  if (prints.length === 0) return `${text.fabric(fabric)}, ${text.role(role).toLowerCase()}`;
  const isNamed = prints.some(({ letter, name }) => name !== letter);
  const named = prints.map(({ letter, name }) => (name === letter ? letter : `${letter} ${name}`));
  const head = role === 'top' ? '' : `${text.role(role)}: `;
  const kind = isNamed ? '' : `${text.fabric(fabric)} `;
  return `${head}${kind}${named.join(', ')}${prints.length > 1 ? ` ${sheet.ofEach}` : ''}`;
}

function sayBuy(
  { text }: MakingContext,
  { sheet }: HandOut['words'],
  { buy, purchase, lacking }: ClothGroup['each'],
): string {
  const bought = purchase?.map((line) => typesetFractions(line.text)) ?? [
    writeMeasure(text.language, buy.unit, buy.amount),
  ];
  return [...bought, ...(lacking ? [sheet.lacking(lacking)] : [])].join('; ');
}

/** Thread, bobbins, needles and blades, for one pupil and for all. */
function listRest({ text }: MakingContext, { plan, words, all }: HandOut) {
  const { sheet } = words;
  const spool = (amount: number) =>
    writeMeasure(text.language, plan.thread.unit, Math.ceil(amount));
  return [
    [sheet.thread, spool(plan.thread.used), spool(all.thread.used)],
    [sheet.bobbins, plan.thread.bobbins, all.thread.bobbins],
    [sheet.needles(plan.bulk.needle), all.needles.each, all.needles.all],
    [sheet.blades, all.blades.each, all.blades.all],
  ] as const;
}
