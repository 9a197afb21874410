import { html, type TemplateResult } from 'lit';
import { letterOf } from '#core/layout/letter-of.ts';
import { measureSpread, type Spread } from '#core/layout/measure-spread.ts';
import type { ShownLayout } from '../../data/is-layout-answer.ts';
import { foldView } from '../../fields/fold-view.ts';
import type { LayoutContext, ShownGrid } from './layout-context.ts';
import { namePrint } from './layout-view-board.ts';

/** What touches in the grid as it lies now, the fewest there can be, and how evenly the prints lie. */
export function figuresView(
  context: LayoutContext,
  grid: ShownGrid,
  answer: ShownLayout,
): TemplateResult {
  const { layout, light } = context.words;
  const { sides, corners } = countMeetings(grid);
  const format = new Intl.NumberFormat(light.language, { maximumFractionDigits: 1 });
  const spreads = grid.names.map((_, print) => measureSpread(grid.cells, print));
  const worst = Math.max(...spreads.map(({ rows }) => rows));
  const pairs = sides + (answer.input.touch === 'corners' ? corners : 0);
  const figures = [
    [layout.figures.sides, `${sides}`],
    [layout.figures.corners, `${corners}`],
    [layout.figures.fewest, `${answer.fewest}`],
    [layout.figures.spread, format.format(worst)],
  ];
  return html`<div part="figures">
    <dl class="figures">
      ${figures.map(([name, figure]) => html`<div><dt>${name}</dt><dd><b>${figure}</b></dd></div>`)}
    </dl>
    ${pairs === answer.fewest ? html`<p class="soft">${layout.best}</p>` : ''}
    ${foldView({ title: layout.spread, body: spreadView(context, grid, spreads) })}
  </div>`;
}

/** Pairs of blocks of one print, by how they meet. */
export function countMeetings({ meetings }: Pick<ShownGrid, 'meetings'>): {
  readonly sides: number;
  readonly corners: number;
} {
  const sides = meetings.filter(({ kind }) => kind === 'side').length;
  return { sides, corners: meetings.length - sides };
}

function spreadView(
  { words }: LayoutContext,
  grid: ShownGrid,
  spreads: readonly Spread[],
): TemplateResult {
  const format = new Intl.NumberFormat(words.light.language, { maximumFractionDigits: 1 });
  return html`<table class="spread">
    <thead>
      <tr>${words.layout.columnsOf.map((name) => html`<th scope="col">${name}</th>`)}</tr>
    </thead>
    <tbody>
      ${spreads.map(({ count, rows, columns, centre }, print) => {
        const figures = [rows, columns, centre ?? 0].map((value) => format.format(value));
        return html`<tr>
          <th scope="row">${namePrint(grid, letterOf(print))}</th>
          ${[`${count}`, ...figures].map((figure) => html`<td>${figure}</td>`)}
        </tr>`;
      })}
    </tbody>
  </table>`;
}
