import type { Pair, SewFor, SwatchResult, Unit, WashAnswer } from '#core/contract.ts';
import { roundTo } from '#core/length.ts';
import { sayLength, saySides } from './say-length.ts';
import type { Row, Telling } from './telling.ts';

/** What the swatches say, the sizes before and after, and whether to wash the cloth first. */
export function tellWash(answer: WashAnswer): Telling {
  const { unit } = answer.input;
  const names = [...new Set(answer.swatches.map(({ fabric }) => fabric))];
  const sizes = answer.sizes.map(
    ({ washes, low, high, ...size }): Row => [
      `After ${sayWashes(washes)}`,
      `${saySides(size, unit)}, from ${saySides(low, unit)} to ${saySides(high, unit)}`,
    ],
  );
  const tables = [
    { name: 'Change in the wash', rows: answer.swatches.map(tellSwatch) },
    { name: 'The whole quilt', rows: answer.sandwich.map(tellSandwich) },
    { name: 'Sizes', rows: [...sizes, ...tellSewFor(answer.sewFor, unit)] },
    { name: 'Prewashing', rows: [tellPrewash(answer)] },
  ];
  return {
    title: names.length === 0 ? 'What the wash does' : `What the wash does to ${names.join(', ')}`,
    tables: tables.filter(({ rows }) => rows.length > 0),
    cautions: answer.cautions,
  };
}

function tellSwatch({ fabric, direction, washes, change, low, high, n }: SwatchResult): Row {
  const between =
    low === undefined || high === undefined ? '' : `, between ${percent(low)} and ${percent(high)}`;
  const name = `${fabric}, ${direction}, ${sayWashes(washes)}`;
  return [name, `${percent(change)}${between} (${n} measured)`];
}

function tellSandwich({ washes, change }: { readonly washes: number; readonly change: Pair }): Row {
  const { width, height } = change;
  return [`After ${sayWashes(washes)}`, `width ${percent(width)}, height ${percent(height)}`];
}

function tellSewFor(sewFor: SewFor | undefined, unit: Unit): readonly Row[] {
  if (sewFor === undefined) return [];
  const { nearest } = sewFor;
  return [
    ['Sew for the size you want', saySides(sewFor, unit)],
    ...(nearest === undefined ? [] : [tellNearest(nearest, unit)]),
  ];
}

function tellNearest(nearest: NonNullable<SewFor['nearest']>, unit: Unit): Row {
  const { columns, rows, cut, washed } = nearest;
  return [
    'Nearest in whole blocks',
    `${columns} by ${rows}, cut ${sayLength(cut, unit)}: washed ${saySides(washed, unit)}`,
  ];
}

function tellPrewash({ prewash }: WashAnswer): Row {
  return [prewash.advised ? 'Wash the cloth first' : 'No need to wash first', prewash.why];
}

function sayWashes(washes: number): string {
  return washes === 1 ? '1 wash' : `${washes} washes`;
}

function percent(change: number): string {
  return `${roundTo(change, 1)} %`;
}
