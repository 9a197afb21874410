import { html, type TemplateResult } from 'lit';

/**
 * Blocks across and down to scale, each seam snipped: one outline and one path for all the seams, however many.
 *
 * @param label what it shows, for those who do not see it.
 */
export function gridDrawing(columns: number, rows: number, label: string): TemplateResult {
  const across = count(rows - 1).map((row) => `M0 ${row}H${columns}`);
  const down = count(columns - 1).map((column) => `M${column} 0V${rows}`);
  return html`<svg viewBox="0 0 ${columns} ${rows}" role="img" aria-label=${label}>
    <path d="M0 0H${columns}V${rows}H0Z" />
    <path class="seams" d=${[...across, ...down].join('') || 'M0 0'} />
  </svg>`;
}

/** 1 to a number. */
function count(most: number): readonly number[] {
  return Array.from({ length: most }, (_, index) => index + 1);
}
