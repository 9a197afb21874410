import { html, svg, type TemplateResult } from 'lit';

/** How a swatch is marked; lengths in one unit, whichever. */
export interface MarkGuide {
  /** Side of the swatch as cut. */
  readonly specimen: number;
  /** From mark to mark. */
  readonly marks: number;
  /** Width of the bolt. */
  readonly bolt: number;
  readonly label: string;
  readonly words: {
    readonly selvage: string;
    readonly tenth: string;
    readonly roll: string;
    readonly specimen: string;
    readonly marks: string;
  };
}

/** The bolt on the left, the swatch on the right, larger: each to its own scale. */
const BOLT = { x: 4, y: 24, width: 150, height: 206 };
const SWATCH = { x: 206, y: 44, side: 150 };

/**
 * Where to cut swatches on the bolt and how to mark one, both to scale: three swatches that share no thread where
 * there is room, clear of the tenth of the width next to each selvage; three pairs of marks each way.
 */
export function markGuide(guide: MarkGuide): TemplateResult {
  return html`<svg class="guide" viewBox="0 0 360 246" role="img" aria-label=${guide.label}>
    ${boltView(guide)}${swatchView(guide)}
  </svg>`;
}

function boltView({ specimen, bolt, words }: MarkGuide) {
  const scale = BOLT.width / bolt;
  const side = specimen * scale;
  const tenth = BOLT.width / 10;
  const room = BOLT.width - 2 * tenth - side;
  const rise = (BOLT.height - 3 * side) / 4;
  const ends = [BOLT.x, BOLT.x + BOLT.width];
  return svg`
    <rect class="cloth" x=${BOLT.x} y=${BOLT.y} width=${BOLT.width} height=${BOLT.height} />
    <rect class="barred" x=${BOLT.x} y=${BOLT.y} width=${tenth} height=${BOLT.height} />
    <rect class="barred" x=${BOLT.x + BOLT.width - tenth} y=${BOLT.y} width=${tenth} height=${BOLT.height} />
    ${ends.map((x) => svg`<path class="selvage" d="M${x} ${BOLT.y}v${BOLT.height}" />`)}
    ${[0, 1, 2].map(
      (index) => svg`<rect class="swatch" x=${round(BOLT.x + tenth + (room * index) / 2)}
        y=${round(BOLT.y + rise + index * (side + rise))} width=${round(side)} height=${round(side)} />`,
    )}
    <text x=${BOLT.x} y="11">${words.selvage}, ${words.tenth}</text>
    <path class="pointer" d="M${BOLT.x + tenth / 2} 15v7" />`;
}

function swatchView({ specimen, marks, words }: MarkGuide) {
  const { x, y, side } = SWATCH;
  const scale = side / specimen;
  const edge = ((specimen - marks) / 2) * scale;
  const span = marks * scale;
  const places = [0.15, 0.5, 0.85].map((share) => round(edge + share * span));
  const [start, end] = [round(edge), round(edge + span)];
  const foot = y + side + 14;
  return svg`
    <rect class="cloth swatch" x=${x} y=${y} width=${side} height=${side} />
    ${places.map(
      (place) =>
        svg`<path class="pair" d="M${x + place} ${y + start}V${y + end}M${x + start} ${y + place}H${x + end}" />`,
    )}
    ${places.flatMap((place) =>
      [
        [place, start],
        [place, end],
        [start, place],
        [end, place],
      ].map(([dx = 0, dy = 0]) => svg`<circle class="dot" cx=${x + dx} cy=${y + dy} r="3" />`),
    )}
    <path class="arrow" d="M${x - 14} ${y + side - 10}V${y + 10}m-4 7l4-7l4 7" />
    <text x=${x + side / 2} y="11" text-anchor="middle">${words.specimen}</text>
    <path class="edge" d="M${x} ${y - 22}v8M${x} ${y - 18}h${side}M${x + side} ${y - 22}v8" />
    <path class="edge" d="M${x + start} ${foot - 4}v8M${x + start} ${foot}H${x + end}M${x + end} ${foot - 4}v8" />
    <text x=${x + side / 2} y=${foot + 18} text-anchor="middle">${words.marks}</text>
    <text text-anchor="middle" transform="translate(${x - 20} ${y + side / 2}) rotate(-90)">${words.roll}</text>`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
