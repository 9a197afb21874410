import { html, type TemplateResult } from 'lit';
import type { ShownYardage } from '../../data/is-yardage-answer.ts';
import { cautionsView } from '../../fields/cautions-view.ts';
import { sayBought } from '../../fields/say-bought.ts';
import { stripDrawing } from './strip-drawing.ts';
import type { YardageContext } from './yardage-context.ts';

type Roll = ShownYardage['fabrics'][number];
type Strip = Roll['strips'][number];
type Sizes = ShownYardage['input']['fabrics'][number]['pieces'];

/** One large answer for each cloth, whether the bolt has it, how to cut it, and what to mind. */
export function resultView(context: YardageContext, answer: ShownYardage): TemplateResult {
  const { words, api } = context;
  const { self } = answer.links;
  const image = self.replace('/v1/yardage?', '/v1/yardage.svg?');
  return html`${answer.fabrics.map((roll, at) =>
    rollView(context, roll, answer.input.fabrics[at]?.pieces ?? []),
  )}
    ${image === self ? '' : html`<a part="link" href=${api + image}>${words.yardage.drawn}</a>`}
    ${cautionsView(words.light, answer.cautions, context.sayCaution)}`;
}

function rollView(context: YardageContext, roll: Roll, sizes: Sizes): TemplateResult {
  const { words, sayMoney } = context;
  const { yardage } = words;
  return html`<section part="result">
    <dl class="figures" part="figures"><div>
      <dt>${yardage.buy}</dt>
      <dd><b>${sayBought(words.light.language, roll.buy)}</b> <small>${yardage.cutInto(context.sayLength(roll.length))}</small></dd>
    </div></dl>
    ${roll.enough === undefined ? '' : enoughView(context, roll)}
    ${
      roll.cost?.of === 'price' && sayMoney !== undefined
        ? html`<p class="line" part="cost"><span>${yardage.cost}</span><b>${sayMoney(roll.cost.total)}</b></p>`
        : ''
    }
    <div part="strips">
      <h3>${yardage.strips}</h3>
      <ul>${roll.strips.map((strip) => stripView(context, strip, [roll.usableWidth, sizes]))}</ul>
    </div>
  </section>`;
}

function enoughView({ words }: YardageContext, { enough, fits = [] }: Roll): TemplateResult {
  const { yardage } = words;
  if (enough) return html`<p class="enough" part="enough">${yardage.enough}</p>`;
  const given = fits.map(({ id, count }) => `${count} × ${id}`).join(', ');
  return html`<p class="fault" part="enough">${yardage.short} ${given || '0'}.</p>`;
}

function stripView(
  context: YardageContext,
  strip: Strip,
  [usable, sizes]: readonly [number, Sizes],
): TemplateResult {
  const { yardage, light } = context.words;
  const count = new Intl.NumberFormat(light.language).format(strip.count);
  const pieces = strip.pieces
    .map(({ id, count: side, turned }) => `${side} × ${id}${turned ? ` (${yardage.turned})` : ''}`)
    .join(', ');
  const rest = strip.left > 0 ? `, ${yardage.rest(context.sayLength(strip.left))}` : '';
  return html`<li class="strip">
    <b>${yardage.strip(count, context.sayLength(strip.length))}</b> <span>${pieces}${rest}</span>
    ${stripDrawing(strip, { usable, sizes, label: yardage.drawing(pieces) })}
  </li>`;
}
