import { html, type TemplateResult } from 'lit';
import { letterOf } from '#core/layout/letter-of.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { drawFloor } from './draw-floor.ts';
import type { LayoutContext, ShownGrid } from './layout-context.ts';
import { splitSheets } from './split-sheets.ts';

/** The sheet to lay beside the quilt on the floor: on one page up to 20 by 20 blocks, on several beyond. */
export function floorView({ words }: LayoutContext, grid: ShownGrid): TemplateResult {
  const { layout } = words;
  const pages = splitSheets(grid.cells);
  const name = (page: number) =>
    pages.length === 1 ? '' : layout.page(letterOf(page), pages.length);
  const across = pages.filter(({ row }) => row === 0).length;
  return html`<div class="floor" part="floor">
    ${pages.map(
      (page) => html`<section>
        <h2>${layout.floor(name(page.page))}</h2>
        ${drawingView(drawFloor(page, grid.colorOf), 'sheet', layout.floor(name(page.page)))}
        <ul class="key">
          ${grid.names.map(
            (print, at) =>
              html`<li>${printSwatch(at, grid.colorOf(at))} <b>${letterOf(at)}</b> ${print === letterOf(at) ? '' : print} × ${countOf(grid, at)}</li>`,
          )}
          ${page.page === 0 ? html`<li>◤ ${layout.topLeft}</li>` : ''}
        </ul>
        ${pages.length > 1 ? mapView(layout.pages, { pages: pages.length, across, here: page.page }) : ''}
      </section>`,
    )}
  </div>`;
}

function countOf({ cells }: ShownGrid, print: number): number {
  return cells.join('').split(letterOf(print)).length - 1;
}

/** How the pages lie beside each other, this one marked. */
function mapView(
  title: string,
  {
    pages,
    across,
    here,
  }: { readonly pages: number; readonly across: number; readonly here: number },
): TemplateResult {
  const rows = Array.from({ length: pages / across }, (_, down) => down * across);
  const line = (first: number) => Array.from({ length: across }, (_, at) => first + at);
  return html`<div class="key">${title}
    <table class="map">${rows.map(
      (first) =>
        html`<tr>${line(first).map((page) => html`<td class=${page === here ? 'here' : ''}>${letterOf(page)}</td>`)}</tr>`,
    )}</table>
  </div>`;
}
