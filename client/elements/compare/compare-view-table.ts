import { html, type TemplateResult } from 'lit';
import type { CompareContext } from './compare-context.ts';
import { FIGURES, type FigureName, type Figures, listFigures, MEASURES } from './list-figures.ts';
import { roundAsSaid, sayMeasure } from './say-measure.ts';

/** The figures of both plans, a row each, and in words how the second differs from the first. */
export function tableView(context: CompareContext): TemplateResult {
  const { state, words, telling } = context;
  const { compare } = words;
  const [one, other] = [state.a, state.b].map(({ answer }) => answer && listFigures(answer));
  const isTold = (name: FigureName) => name !== 'cost' || telling.sayMoney !== undefined;
  const shown = FIGURES.filter(
    (name) => isTold(name) && [one, other].some((side) => side?.[name] !== undefined),
  );
  return html`<table part="figures" aria-label=${compare.table}>
    <thead>
      <tr>
        <th scope="col">${compare.figure}</th>
        <th scope="col">${compare.plans.a}</th>
        <th scope="col">${compare.plans.b}</th>
      </tr>
    </thead>
    <tbody>
      ${shown.map(
        (name) => html`<tr>
          <th scope="row">${compare.figures[name]}</th>
          <td>${sayFigure(context, name, one)}</td>
          <td>
            ${sayFigure(context, name, other)}
            <small>${sayDifference(context, name, [one, other])}</small>
          </td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function sayFigure({ telling }: CompareContext, name: FigureName, figures?: Figures): string {
  const value = figures?.[name];
  return value === undefined ? '–' : sayMeasure(MEASURES[name], value, telling);
}

function sayDifference(
  { words, telling }: CompareContext,
  name: FigureName,
  [one, other]: readonly (Figures | undefined)[],
): string {
  const { compare } = words;
  const [before, after] = [one?.[name], other?.[name]];
  if (before === undefined || after === undefined) return '';
  const measure = MEASURES[name];
  const [from, to] = [before, after].map((value) => roundAsSaid(measure, value, telling.unit));
  const by = (to ?? 0) - (from ?? 0);
  if (Math.abs(by) < 1e-6) return compare.same;
  const said = sayMeasure(measure, Math.abs(by), telling);
  return by > 0 ? compare.more(said) : compare.less(said);
}
