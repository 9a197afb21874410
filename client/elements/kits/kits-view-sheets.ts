import { html, nothing, type TemplateResult } from 'lit';
import { toMillimetres } from '#core/length.ts';
import type { ShownKits } from '../../data/kits-answer-schema.ts';
import { writeMoney } from '../../data/money.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import { drawBolts } from './draw-bolt.ts';
import { listPrints } from './draw-kit.ts';
import { type KitsContext, sayLength } from './kits-context.ts';

type Cutting = ShownKits['cutting'][number];

/** How each bolt is cut: a list, then each bolt unrolled to scale. */
export function cuttingView(context: KitsContext, answer: ShownKits): TemplateResult {
  const { cutting } = context.words;
  const body = html`<p class="soft">${cutting.how(sayLength(context, answer.cut))}</p>
    <table class="list">
      <thead>
        <tr>${cutting.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr>
      </thead>
      <tbody>
        ${answer.cutting.map((bolt) => rowView(context, answer, bolt))}
      </tbody>
    </table>
    <div class="unrolled">${boltsView(context, answer)}</div>`;
  return sheetView('cutting', cutting.title, body);
}

function swatchOf(answer: ShownKits, { role, print }: Cutting) {
  return role === 'top' ? printSwatch(listPrints(answer).indexOf(print) % 26) : nothing;
}

function rowView(context: KitsContext, answer: ShownKits, bolt: Cutting): TemplateResult {
  const { words } = context;
  const left = answer.left.find(({ id }) => id === bolt.id);
  const over = left?.squares ?? 0;
  return html`<tr>
    <th scope="row"><span class="swatch">${swatchOf(answer, bolt)} ${bolt.id}</span></th>
    <td><b>${bolt.cut}</b></td>
    <td>${bolt.used}</td>
    <td>${sayLength(context, bolt.length)}</td>
    <td>${sayLength(context, left?.length ?? 0)} ${over > 0 ? words.cutting.over(over) : nothing}</td>
  </tr>`;
}

function boltsView(context: KitsContext, answer: ShownKits) {
  const { words } = context;
  const { unit, bolts, plan } = answer.input;
  const prints = listPrints(answer);
  const drawings = drawBolts(
    answer.cutting.map(({ id, role, print, cut, perStrip, used, length }) => {
      const bolt = bolts.find((one) => one.id === id);
      const mm = (value = 0) => toMillimetres(value, unit);
      const left = answer.left.find((one) => one.id === id)?.length ?? 0;
      const side = toMillimetres(answer.cut, plan.unit);
      const taken = cut * side + mm(bolt?.squaring);
      return {
        width: mm((bolt?.width ?? 0) - 2 * (bolt?.selvage ?? 0)),
        length: cut === 0 ? mm(left) : taken + mm(left) * (taken / mm(length)),
        ...{ squaring: mm(bolt?.squaring), cut: side, strips: cut, perStrip, used },
        print: role === 'top' ? prints.indexOf(print) % 26 : undefined,
      };
    }),
  );
  return answer.cutting.map((bolt, at) => {
    const drawing = drawings[at];
    const label = words.cutting.drawing(bolt.id, bolt.cut, bolt.perStrip);
    return html`<figure>
      <figcaption><b>${bolt.id}</b> ${bolt.cut === 0 ? html`<small>${words.cutting.untouched}</small>` : nothing}</figcaption>
      ${drawing && drawingView(drawing, 'bolt', label)}
    </figure>`;
  });
}

/** What stands on the tag of one kit: its money, its weight, its fibres and its care. */
export function shelfView(context: KitsContext, answer: ShownKits): TemplateResult {
  const { text, words } = context;
  const { weight, label } = answer;
  const rows = [
    [words.sheet.weight, writeMeasure(text.language, weight.unit, weight.dry), text.language],
    [words.sheet.content, label.content, 'en'],
    [words.sheet.care, label.care, 'en'],
  ] as const;
  const body = html`${moneyTable(context, answer)}
    <dl class="pairs">
      ${rows.map(([name, said, language]) => html`<dt>${name}</dt><dd lang=${language}>${said}</dd>`)}
    </dl>`;
  return sheetView('shelf', words.sheet.title, body);
}

const PARTS = ['materials', 'labour', 'packaging', 'overhead', 'cost', 'price'] as const;

function moneyTable({ text, words }: KitsContext, { money }: ShownKits): TemplateResult {
  if (money === undefined) return html`<p class="soft">${words.sheet.noMoney}</p>`;
  const { currency, marginPercent } = money;
  const shown = PARTS.flatMap((name) => {
    const minor = money[name];
    return minor === undefined ? [] : [{ name, said: writeMoney(text.language, currency, minor) }];
  });
  return html`<table class="list">
    <tbody>
      ${shown.map(
        ({ name, said }) => html`<tr class=${name === 'cost' || name === 'price' ? 'total' : ''}>
          <th scope="row">${words.sheet.rows[name]}</th>
          <td>${said}</td>
        </tr>`,
      )}
      ${
        marginPercent === undefined
          ? nothing
          : html`<tr>
              <th scope="row">${words.sheet.rows.marginPercent}</th>
              <td>${writeMeasure(text.language, '%', marginPercent)}</td>
            </tr>`
      }
    </tbody>
  </table>`;
}

/** Cautions, and what was taken for granted. */
export function groundsView(
  { text, words, cautions: { say } }: KitsContext,
  answer: ShownKits,
): TemplateResult {
  const warned = html`<ul class="lines">
    ${answer.cautions.map(
      (caution) => html`<li class=${caution.severity}>
        <strong>${text.severities[caution.severity]}.</strong> ${say(caution, { isDraftLabel: true })}
        ${caution.source && html`<small lang="en">${caution.source}</small>`}
      </li>`,
    )}
  </ul>`;
  return html`${sheetView('cautions', words.cautions, warned)}
    <details part="grounds">
      <summary>${words.assumptions}</summary>
      <ul class="lines" lang="en">
        ${answer.assumptions.map(
          ({ path, value, why, source }) =>
            html`<li>${why}: <b>${value}</b> <small>${path}${source && `, ${source}`}</small></li>`,
        )}
      </ul>
    </details>`;
}
