import { html, nothing, svg, type TemplateResult } from 'lit';

/** What swatches of one cloth and direction say, percent of shrink: above zero it got smaller. */
export interface Band {
  readonly mean: number;
  /** Where the mean lies; absent with one specimen. */
  readonly interval?: Span | undefined;
  /** Where one new piece lies. */
  readonly next?: Span | undefined;
  /** What the table takes for the cloth. */
  readonly usual?: Span | undefined;
  readonly points: readonly number[];
}

export interface Span {
  readonly low: number;
  readonly high: number;
}

const WIDTH = 360;
const EDGE = 14;
const TOP = 15;
const FOOT = 41;

/**
 * The shrink of a cloth as a band on a ruler marked in percent: pale where one new piece may fall, dark where the mean
 * lies, a dot for each specimen, and above it what the table takes.
 *
 * @param scale ends of the ruler, whole percents; the same for all rulers that are to be compared.
 */
export function rulerBand(band: Band, scale: Span, label: string): TemplateResult {
  const at = (percent: number) => placeOn(scale, percent);
  const { mean, interval, next, usual, points } = band;
  const box = (name: string, { low, high }: Span, y: number, height: number) => svg`<rect
    class=${name} x=${at(low)} y=${y} width=${Math.max(1, at(high) - at(low))} height=${height} />`;
  return html`<svg class="ruler" viewBox="0 0 ${WIDTH} 62" role="img" aria-label=${label}>
    ${usual === undefined ? nothing : box('usual', usual, 2, 7)}
    ${next === undefined ? nothing : box('next', next, TOP, FOOT - TOP)}
    ${interval === undefined ? nothing : box('mean-band', interval, TOP, FOOT - TOP)}
    <path class="edge" d=${traceTicks(scale)} />
    <path class="mean" d="M${at(mean)} ${TOP - 3}V${FOOT}" />
    ${stackDots(points).map(
      ([point, rank]) => svg`<circle class="dot" cx=${at(point)} cy=${36 - 8 * rank} r="3.2" />`,
    )}
    ${listNumerals(scale).map(
      (percent) => svg`<text x=${at(percent)} y="58" text-anchor="middle">${percent}</text>`,
    )}
  </svg>`;
}

/**
 * Ends of a ruler that holds all of some shrinks, zero among them.
 *
 * @example
 * findScale([3.5, 6.2, -0.4]) // => { low: -1, high: 7 }
 */
export function findScale(shrinks: readonly number[]): Span {
  const low = Math.floor(Math.min(0, ...shrinks));
  const high = Math.ceil(Math.max(1, ...shrinks));
  return { low, high };
}

/** Specimens that changed alike stand on top of each other, up to three high. */
function stackDots(points: readonly number[]): readonly (readonly [number, number])[] {
  return points.map((point, index) => {
    const alike = points.slice(0, index).filter((other) => Math.abs(other - point) < 0.05).length;
    return [point, Math.min(alike, 2)];
  });
}

function placeOn({ low, high }: Span, percent: number): number {
  const share = (percent - low) / (high - low);
  return round(EDGE + share * (WIDTH - 2 * EDGE));
}

/** A tick a percent, longer at those with a numeral. */
function traceTicks(scale: Span): string {
  const numerals = listNumerals(scale);
  const ticks = listPercents(scale).map(
    (percent) => `M${placeOn(scale, percent)} ${FOOT}v${numerals.includes(percent) ? 7 : 4}`,
  );
  return [`M${EDGE} ${FOOT}H${WIDTH - EDGE}`, ...ticks].join('');
}

function listPercents({ low, high }: Span): readonly number[] {
  return Array.from({ length: high - low + 1 }, (_, index) => low + index);
}

function listNumerals(scale: Span): readonly number[] {
  const span = scale.high - scale.low;
  const step = span <= 12 ? 1 : span <= 24 ? 2 : 5;
  return listPercents(scale).filter((percent) => percent % step === 0);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
