import { html, type TemplateResult } from 'lit';
import type { ShownSize } from '../../data/is-size-answer.ts';
import { cautionsView } from '../../fields/cautions-view.ts';
import { sayBought } from '../../fields/say-bought.ts';
import { writeHours } from '../../fields/write-figures.ts';
import { findKind } from '../../host/size-kind.ts';
import { gridDrawing } from './grid-drawing.ts';
import type { SizeContext } from './size-context.ts';

type Need = ShownSize['fabrics'][number];

const isDanger = ({ severity }: ShownSize['cautions'][number]) => severity === 'danger';

/** Less than this is no difference, in the unit. */
const SLIGHT = { in: 0.0625, cm: 0.05 } as const;

/** What comes of the size: what nobody may pass by first, then the figures, the cloth and what it costs. */
export function resultView(context: SizeContext, answer: ShownSize): TemplateResult {
  const { words, api } = context;
  const { columns, rows } = answer.grid;
  return html`${cautionsView(words.light, answer.cautions.filter(isDanger), context.sayCaution)}
    <section class="result" part="result">
      <div part="drawing">${gridDrawing(columns, rows, words.size.drawing(columns, rows))}</div>
      <div>
        <dl class="figures" part="figures">${listFigures(context, answer).map(pairView)}</dl>
        ${findKind(context.status.draft) === 'grid' ? '' : html`<p>${sayFit(context, answer)}</p>`}
      </div>
    </section>
    <section part="cloth">
      <h3>${words.size.cloth}</h3>
      <ul>${answer.fabrics.filter(({ pieces }) => pieces > 0).map((need) => needView(context, need))}</ul>
      ${costView(context, answer)}
      <a part="link" href=${api + answer.links.page}>${words.size.whole}</a>
    </section>`;
}

type Said = readonly [name: string, said: string, more?: string];

function pairView([name, said, more]: Said): TemplateResult {
  return html`<div><dt>${name}</dt><dd><b>${said}</b> <small>${more}</small></dd></div>`;
}

function listFigures(context: SizeContext, answer: ShownSize): readonly Said[] {
  const { size } = context.words;
  const { grid, block, time } = answer;
  const { washed, sewn } = answer.size;
  return [
    [size.blocks, `${grid.columns} × ${grid.rows}`, size.cut(context.sayLength(block.cut))],
    [
      size.washed,
      context.sayLength(washed.width, washed.height),
      size.sewn(context.sayLength(sewn.width, sewn.height)),
    ],
    [size.work, writeHours(time.total)],
  ];
}

/** How the quilt differs from the wish, in figures and not in colour. */
function sayFit(context: SizeContext, { fit, input }: ShownSize): string {
  const { size } = context.words;
  const tell = (by: number, [more, less]: readonly [Telling, Telling]) =>
    Math.abs(by) < SLIGHT[input.unit]
      ? ''
      : (by > 0 ? more : less)(context.sayLength(Math.abs(by)));
  const said = [
    tell(fit.width, [size.wider, size.narrower]),
    tell(fit.height, [size.longer, size.shorter]),
  ].filter((text) => text !== '');
  return size.fit(said.join(', ') || size.same);
}

type Telling = (by: string) => string;

function needView(context: SizeContext, need: Need): TemplateResult {
  const { light, size } = context.words;
  const named = need.print === undefined || need.print.length < 2 ? '' : need.print;
  return html`<li class="line">
    <span>${named || light.fabric(need.fabric)} <small>${light.role(need.role)} ${named ? '' : need.print}</small></span>
    <b>${sayNeed(context, need)}</b>
    ${need.lacking === undefined ? '' : html`<p class="fault">${size.lacking(need.lacking)}</p>`}
  </li>`;
}

/** What to ask for: off the roll, or as the shop sells it. */
function sayNeed({ words }: SizeContext, { buy, purchase }: Need): string {
  return sayBought(words.light.language, purchase ?? [{ offer: '', ...buy }]);
}

/** Told only where every cloth has a price and the page names the currency. */
function costView({ words, sayMoney }: SizeContext, { fabrics }: ShownSize): TemplateResult | '' {
  const costs = fabrics.filter(({ pieces }) => pieces > 0).map(({ cost }) => cost);
  const isKnown = costs.every((cost) => cost?.of === 'price');
  if (sayMoney === undefined || !isKnown) return '';
  const total = costs.reduce((sum, cost) => sum + (cost?.total ?? 0), 0);
  return html`<p class="line cost" part="cost">
    <span>${words.size.cost}</span>
    <b>${sayMoney(total)}</b>
  </p>`;
}
