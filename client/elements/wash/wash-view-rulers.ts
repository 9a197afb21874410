import { html, nothing, type TemplateResult } from 'lit';
import { FABRICS, type Fabric } from '#core/tables/fabrics.ts';
import type { ShownSwatch } from '../../data/wash-answer-schema.ts';
import { findScale, rulerBand, type Span } from '../../drawing/ruler-band.ts';
import type { Cloth, Direction } from './swatch-table.ts';
import {
  findResults,
  isFabric,
  sayChange,
  sayCloth,
  sayPercent,
  shrinkOf,
  type WashContext,
} from './wash-context.ts';

/** What the swatches of a cloth say: mean and spread as a band on a ruler, then in words; at first, room for that. */
export function rulersView(context: WashContext, { fabric, washes }: Cloth): TemplateResult {
  const { state, words } = context;
  if (state.answer === undefined && state.isBusy) return html`<div class="room"></div>`;
  const results = findResults(context, fabric, washes);
  const row = FABRICS.find(({ name }) => name === fabric);
  const isUsed =
    fabric === 'sandwich' || state.answer?.input.layers.some((layer) => layer.fabric === fabric);
  return html`${results.map((result) => rulerView(context, result, row))}
    ${row === undefined || results.length === 0 ? nothing : usualView(context, row)}
    ${
      results.length > 0 && isUsed === false
        ? html`<p class="soft">${words.swatches.unused}</p>`
        : nothing
    }`;
}

/** What the table takes for the cloth, and where that comes from. */
function usualView(context: WashContext, row: Fabric): TemplateResult {
  const { words } = context;
  const say = (way: Direction) => {
    const { low, usual, high } = row[way];
    const [first, ...rest] = [usual, low, high].map((value) => sayPercent(context, value));
    return words.ruler.usualOf(way, first ?? '', rest[0] ?? '', rest[1] ?? '');
  };
  return html`<p class="soft">
    ${words.ruler.usual} ${say('length')}; ${say('width')}.
    <small class="source" lang="en">${row.shrinkSource}</small>
  </p>`;
}

function rulerView(context: WashContext, result: ShownSwatch, row: Fabric | undefined) {
  const { words, state } = context;
  const usual = result.washes === 1 ? row?.[result.direction] : undefined;
  const change = sayChange(context, result.change);
  const way = words.along[result.direction];
  const name = sayCloth(context, result.fabric);
  const drawn = rulerBand(
    {
      mean: shrinkOf(result.change),
      interval: spanOf(result.low, result.high),
      next: spanOf(result.nextLow, result.nextHigh),
      usual,
      points: listPoints(state.answer?.input.swatches ?? [], result),
    },
    scaleAll(context),
    words.ruler.label(`${name}, ${way.toLowerCase()}`, change),
  );
  return html`<figure class="result">
    <figcaption><span>${way}</span> <b>${change}</b></figcaption>
    ${drawn}
    <p class="soft">${saySpread(context, result)}</p>
    ${result.notes.map((note) => html`<p class="note">${words.ruler.notes[note]}</p>`)}
  </figure>`;
}

/** The interval of the mean, that of one new piece, and what the ruler can tell. */
function saySpread(context: WashContext, result: ShownSwatch): string {
  const { words, state } = context;
  const say = (span: Span) =>
    [sayPercent(context, span.low), sayPercent(context, span.high)] as const;
  const mean = spanOf(result.low, result.high);
  const next = spanOf(result.nextLow, result.nextHigh);
  const reading = words.ruler.reading(sayPercent(context, result.reading));
  if (mean === undefined || next === undefined || result.sd === undefined) return reading;
  return [
    words.ruler.mean(...say(mean)),
    words.ruler.next(...say(next), state.answer?.input.confidence ?? 95),
    words.ruler.count(result.n, sayPercent(context, result.sd)),
    reading,
  ].join(' ');
}

/** An interval of dimensional changes as one of shrinks: the ends change places with their sign. */
export function spanOf(low: number | undefined, high: number | undefined): Span | undefined {
  if (low === undefined || high === undefined) return undefined;
  return { low: shrinkOf(high), high: shrinkOf(low) };
}

interface Measured {
  readonly fabric: string;
  readonly direction: string;
  readonly washes: number;
  readonly before: number;
  readonly after: number;
}

/** The shrink of each specimen behind a result, percent. */
export function listPoints(
  swatches: readonly Measured[],
  { fabric, direction, washes }: Pick<ShownSwatch, 'fabric' | 'direction' | 'washes'>,
): readonly number[] {
  return swatches
    .filter((one) => one.fabric === fabric && one.direction === direction && one.washes === washes)
    .map(({ before, after }) => (100 * (before - after)) / before);
}

/** One scale for all rulers, so that they can be compared. */
function scaleAll({ state }: WashContext): Span {
  const shrinks = (state.answer?.swatches ?? []).flatMap((result) => {
    const { change, low, high, nextLow, nextHigh, fabric, direction } = result;
    const row = isFabric(fabric) ? FABRICS.find(({ name }) => name === fabric) : undefined;
    const usual = row?.[direction];
    const points = listPoints(state.answer?.input.swatches ?? [], result);
    const changes = [change, low, high, nextLow, nextHigh].flatMap((value) =>
      value === undefined ? [] : [shrinkOf(value)],
    );
    return [...changes, ...points, ...(usual === undefined ? [] : [usual.low, usual.high])];
  });
  return findScale(shrinks);
}
