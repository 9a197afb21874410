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
        <ul class="key">${grid.names.map(
          (print, at) =>
            html`<li>${printSwatch(at, grid.colorOf(at))} ${print}, ${countOf(grid, at)}</li>`,
        )}</ul>
        ${pages.length > 1 && page.page === 0 ? mapView(layout.pages, pages.length, across) : ''}
      </section>`,
    )}
  </div>`;
}

function countOf({ cells }: ShownGrid, print: number): number {
  return cells.join('').split(letterOf(print)).length - 1;
}

/** How the pages lie beside each other. */
function mapView(title: string, pages: number, across: number): TemplateResult {
  const rows = Array.from({ length: pages / across }, (_, down) => down);
  const line = (down: number) =>
    Array.from({ length: across }, (_, at) => letterOf(down * across + at)).join(' ');
  return html`<p class="key">${title}: ${rows.map((down) => html`<b>${line(down)}</b> `)}</p>`;
}
