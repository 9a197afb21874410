import { html, svg, type TemplateResult } from 'lit';

/** The words on a template for marks. */
export interface TemplateWords {
  readonly roll: string;
  readonly apart: string;
  readonly check: string;
  readonly checkAfter: string;
  readonly inches: string;
  readonly centimetres: string;
}

/** Half the length of a cross's arm, mm. */
export const ARM = 2.5;
/** Where the three pairs stand along a side, shares of it from its middle. */
const PAIRS = [-0.35, 0, 0.35];
const INCH = 25.4;

/**
 * Crosses true to scale for three pairs of marks each way, with two lines to check the print by. Its size is given in
 * millimetres, which print as such where the printer does not scale.
 *
 * @param marks from cross to cross, mm.
 */
export function markTemplate(marks: number, words: TemplateWords): TemplateResult {
  const side = marks + 2 * ARM;
  const half = side / 2;
  const reach = marks / 2;
  const crosses = PAIRS.flatMap((share) => [
    [share * marks, -reach],
    [share * marks, reach],
    [-reach, share * marks],
    [reach, share * marks],
  ]);
  return html`<svg
    class="template"
    width="${side}mm"
    height="${side}mm"
    viewBox="${-half} ${-half} ${side} ${side}"
    aria-hidden="true"
  >
    ${PAIRS.map(
      (share) =>
        svg`<path class="faint" d="M${share * marks} ${5 - reach}V${reach - 5}M${5 - reach} ${share * marks}H${reach - 5}" />`,
    )}
    ${crosses.map(
      ([x = 0, y = 0]) =>
        svg`<path class="cross" d="M${x - ARM} ${y}h${2 * ARM}M${x} ${y - ARM}v${2 * ARM}" />`,
    )}
    ${checksView(words, reach)}
    ${arrowView(words, reach)}
  </svg>`;
}

function checksView({ check, checkAfter, inches, centimetres }: TemplateWords, reach: number) {
  const x = -0.29 * 2 * reach;
  const line = (y: number, length: number, name: string) => svg`
    <path class="check" d="M${x} ${y}h${length}" />
    <path class="tick" d="M${x} ${y - 2}v4" /><path class="tick" d="M${x + length} ${y - 2}v4" />
    <text x=${x + length + 4} y=${y + 1.3}>${name}</text>`;
  const top = -0.24 * 2 * reach;
  return svg`
    <rect class="blank" x=${x - 4} y=${top - 8} width="116" height="38" />
    <text class="loud" x=${x} y=${top}>${check}</text>
    ${line(top + 8, 50, centimetres)}
    ${line(top + 16, 2 * INCH, inches)}
    <text x=${x} y=${top + 25}>${checkAfter}</text>`;
}

function arrowView({ roll, apart }: TemplateWords, reach: number) {
  const x = 0.2 * 2 * reach;
  return svg`
    <rect class="blank" x=${x - 12} y="30" width="24" height="48" />
    <path class="arrow" d="M${x} 68V38m-3 6l3-6l3 6" />
    <rect class="blank" x=${x - 15} y="70" width="30" height="7" />
    <text x=${x} y="75" text-anchor="middle">${roll}</text>
    <rect class="blank" x="-16" y="-3" width="32" height="7" />
    <text class="loud" x="0" y="1.5" text-anchor="middle">${apart}</text>`;
}
