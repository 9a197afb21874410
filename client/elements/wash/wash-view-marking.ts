import { html, type TemplateResult } from 'lit';
import { markGuide } from '../../drawing/mark-guide.ts';
import { markTemplate } from '../../drawing/mark-template.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { sayLength, type WashContext } from './wash-context.ts';

/** Sides of a swatch, from mark to mark (AATCC TM135: 10 in on 15 in, 25 cm on 38 cm), and of a usual bolt. */
const SWATCH = {
  in: { specimen: 15, marks: 10, bolt: 44 },
  cm: { specimen: 38, marks: 25, bolt: 112 },
} as const;

/** From mark to mark on the printed sheet: the most that fits across both Letter and A4, margins of 12 mm left. */
const PRINTED = { in: { said: 7, millimetres: 7 * 25.4 }, cm: { said: 18, millimetres: 180 } };

/** How to mark, wash and measure a swatch, drawn to scale, and the sheet to print for it. */
export function markingView(context: WashContext): TemplateResult {
  const { words, unit, act } = context;
  const { specimen, marks, bolt } = SWATCH[unit];
  const [wide, apart] = [sayLength(context, specimen), sayLength(context, marks)];
  const guide = markGuide({
    ...SWATCH[unit],
    label: words.marking.drawing(apart, wide),
    words: {
      selvage: words.marking.selvage,
      tenth: words.marking.tenth,
      roll: words.marking.roll,
      specimen: wide,
      marks: apart,
    },
    bolt,
  });
  return sheetView(
    'marking',
    words.marking.title,
    html`${guide}
      <ol class="steps">
        ${words.marking.steps(apart, wide, words.marking.far[unit]).map((step) => html`<li>${step}</li>`)}
      </ol>
      <p>${words.marking.rows}</p>
      <p class="soft">${words.marking.source}</p>
      <div class="off stack">
        <button class="start" @click=${act.printSheet}>${words.marking.print}</button>
        <p class="soft">${words.marking.why(sayLength(context, PRINTED[unit].said))}</p>
      </div>`,
  );
}

/** The sheet that is printed and never shown: crosses true to scale, lines to check them by, room to write. */
export function swatchSheetView(context: WashContext): TemplateResult {
  const { words, unit } = context;
  const { said, millimetres } = PRINTED[unit];
  const { sheet } = words;
  const template = markTemplate(millimetres, {
    roll: sheet.roll,
    apart: sheet.apart(sayLength(context, said)),
    check: sheet.check,
    checkAfter: sheet.checkAfter,
    inches: '2 in',
    centimetres: '5 cm',
  });
  const rows = [...sheet.alongRow, ...sheet.acrossRow];
  return html`<section class="swatch-sheet" aria-label=${sheet.title}>
    <h2>${sheet.title}</h2>
    <p>${sheet.how}</p>
    ${template}
    <table>
      <thead>
        <tr><td>${sheet.cloth}</td>${rows.map((row) => html`<th scope="col">${row}</th>`)}</tr>
      </thead>
      <tbody>
        ${[sheet.before, sheet.after].map(
          (head) => html`<tr><th scope="row">${head}</th>${rows.map(() => html`<td></td>`)}</tr>`,
        )}
      </tbody>
    </table>
  </section>`;
}
