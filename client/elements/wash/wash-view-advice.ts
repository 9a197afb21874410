import { html, nothing, type TemplateResult } from 'lit';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { FABRICS } from '#core/tables/fabrics.ts';
import type { ShownSwatch, ShownWash } from '../../data/wash-answer-schema.ts';
import { leaningBlock } from '../../drawing/leaning-block.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { sayCloth, sayLength, sayPercent, type WashContext } from './wash-context.ts';

/** How much more than true a lean is drawn, so that it is seen. */
const MUCH = 4;

/** Which face will pucker, whether to prewash and why, and how far blocks will lean. */
export function adviceView(context: WashContext, answer: ShownWash): TemplateResult {
  const { words, text } = context;
  const { prewash, pull, swatches } = answer;
  const { format } = new Intl.NumberFormat(text.language, {
    maximumFractionDigits: 1,
    signDisplay: 'exceptZero',
  });
  const most = ({ length, width }: (typeof pull)[number]) => Math.max(length, width);
  const tight = pull.toSorted((one, other) => most(other) - most(one))[0];
  const sign = (points: number) => format(points).replace('-', '−');
  return sheetView(
    'advice',
    words.advice.title,
    html`<ul class="lines">
        ${pull.map(
          ({ layer, length, width, says }) => html`<li class="pull ${says}">
            ${words.advice.pull(layer, says)}
            <small>${words.advice.by(sign(length), sign(width))}</small>
          </li>`,
        )}
      </ul>
      <p>
        <strong>${prewash.advised ? words.advice.prewash : words.advice.noPrewash}.</strong>
        ${typesetFractions(words.advice.why(prewash, tight?.layer))}
      </p>
      ${swatches.map((swatch) => skewView(context, swatch))}`,
  );
}

function skewView(context: WashContext, { fabric, direction, skew }: ShownSwatch) {
  if (skew === undefined) return nothing;
  const { words } = context;
  const cloth = `${sayCloth(context, fabric)}, ${words.along[direction].toLowerCase()}`;
  const said = words.advice.skewText(
    cloth,
    sayPercent(context, skew.mean),
    sayLength(context, Math.abs(skew.lean)),
    sayLength(context, skew.side),
  );
  return html`<div class="skew">
    ${leaningBlock((MUCH * skew.lean) / skew.side, words.advice.drawing)}
    <p><strong>${words.advice.skew}.</strong> ${said}</p>
  </div>`;
}

/** What the table takes for each cloth until it is measured, with where that comes from. */
export function defaultsView({ words, text }: WashContext): TemplateResult {
  const percent = new Intl.NumberFormat(text.language, { maximumFractionDigits: 1 });
  const say = ({ low, usual, high }: { low: number; usual: number; high: number }) =>
    html`<b>${percent.format(usual)}</b> <small>${percent.format(low)}–${percent.format(high)}</small>`;
  return html`<details part="table">
    <summary>${words.table.title}</summary>
    <p class="soft">${words.table.explain}</p>
    <table>
      <thead><tr>${words.table.columns.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
      ${FABRICS.map(
        ({ name, length, width, shrinkSource }) => html`<tbody>
          <tr><th scope="row">${text.fabric(name)}</th><td>${say(length)}</td><td>${say(width)}</td></tr>
          <tr class="under"><td colspan="3"><small lang="en">${shrinkSource}</small></td></tr>
        </tbody>`,
      )}
    </table>
  </details>`;
}

/** Cautions, and what was taken for granted. */
export function groundsView(
  { words, text, cautions }: WashContext,
  answer: ShownWash,
): TemplateResult {
  return html`<section part="grounds">
    <details>
      <summary>${words.notes.cautions}</summary>
      <ul class="lines">
        ${answer.cautions.map(
          (caution) => html`<li class=${caution.severity}>
            ${caution.severity === 'note' ? nothing : html`<strong>${text.severities[caution.severity]}.</strong>`}
            ${typesetFractions(cautions.say(caution, {}))} <small lang="en">${caution.source}</small>
          </li>`,
        )}
      </ul>
    </details>
    <details>
      <summary>${words.notes.assumptions}</summary>
      <ul class="lines" lang="en">
        ${listOnce(answer.assumptions).map(
          ({ value, why, source }) =>
            html`<li>${typesetFractions(why)}: <b>${String(value)}</b><small>${source}</small></li>`,
        )}
      </ul>
    </details>
  </section>`;
}

/** What is taken for granted of every swatch alike is told once. */
function listOnce(assumptions: ShownWash['assumptions']): ShownWash['assumptions'] {
  return assumptions.filter(
    ({ why, value }, index) =>
      assumptions.findIndex((other) => other.why === why && other.value === value) === index,
  );
}
