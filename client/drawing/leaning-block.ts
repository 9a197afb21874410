import { html, type TemplateResult } from 'lit';

/**
 * A block as it was cut, dashed, and as it leans after the wash.
 *
 * @param lean how far its upper edge moves to the right, as a share of its side.
 */
export function leaningBlock(lean: number, label: string): TemplateResult {
  const off = Math.round(Math.max(-0.5, Math.min(0.5, lean)) * 600) / 10;
  return html`<svg class="leaning" viewBox="0 0 120 84" role="img" aria-label=${label}>
    <path class="true" d="M30 12h60v60h-60z" />
    <path class="cloth" d="M${30 + off} 12h60L90 72h-60z" />
  </svg>`;
}
