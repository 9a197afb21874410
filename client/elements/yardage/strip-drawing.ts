import { html, type TemplateResult } from 'lit';

/** A strip as it is drawn. */
export interface DrawnStrip {
  readonly length: number;
  readonly pieces: readonly {
    readonly id: string;
    readonly count: number;
    readonly turned: boolean;
  }[];
}

/** What a drawing needs to know beside the strip, lengths in its unit. */
export interface StripFacts {
  /** Width of the cloth between the edges that are cut off. */
  readonly usable: number;
  readonly sizes: readonly {
    readonly id: string;
    readonly width: number;
    readonly length: number;
  }[];
  /** What it shows, for those who do not see it. */
  readonly label: string;
}

/** One strip across the cloth to scale, its pieces side by side; what is left over stays bare. */
export function stripDrawing(
  strip: DrawnStrip,
  { usable, sizes, label }: StripFacts,
): TemplateResult {
  return html`<svg viewBox="0 0 ${usable} ${strip.length}" preserveAspectRatio="xMinYMin" role="img" aria-label=${label}>
    <path class="bare" d="M0 0H${usable}V${strip.length}H0Z" />
    <path d=${drawPieces(strip, sizes) || 'M0 0'} />
  </svg>`;
}

function drawPieces(strip: DrawnStrip, sizes: StripFacts['sizes']): string {
  let left = 0;
  const boxes: string[] = [];
  for (const { id, count, turned } of strip.pieces) {
    const { width = 0, length = 0 } = sizes.find((size) => size.id === id) ?? {};
    const [across, along] = turned ? [length, width] : [width, length];
    for (let piece = 0; piece < count; piece += 1) {
      boxes.push(`M${left} 0h${across}v${along}h${-across}z`);
      left += across;
    }
  }
  return boxes.join('');
}
