import { apportionBlocks } from '../cloth/apportion-blocks.ts';
import type { LayoutInput, LayoutPattern, LayoutPrint, LayoutRequest, Touch } from '../contract.ts';
import { letterOf } from '../layout/letter-of.ts';
import { roundTo } from '../length.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { checkFixed, countPinned } from './check-fixed.ts';
import { keep, type Reading, type Resolved, readPlain, writeQuery } from './reading.ts';

/** The seed of a layout when none was asked for. */
const SEED = 1;

/**
 * Understands a wish for a layout. Counts left out share the grid evenly, or are those of the grid
 * where all of it is given. Faults: `counts-do-not-sum` (or some prints counted and others not),
 * `repeated-id`, `too-small` for a count below the blocks pinned, and what `checkFixed` finds.
 *
 * @returns as `resolvePlan` does
 */
export function resolveLayout(request: LayoutRequest): Outcome<Resolved<LayoutInput>> {
  const reading: Reading = { unit: 'in', faults: [], assumptions: [], kept: [] };
  const { columns, rows } = request;
  keep(reading, ['columns'], columns);
  keep(reading, ['rows'], rows);
  checkFixed(reading, request);
  const isRead = reading.faults.length === 0;
  const pinned = isRead ? countPinned(request) : request.prints.map(() => 0);
  const prints = resolvePrints(reading, request, pinned);
  const pattern = readPlain<LayoutPattern>(reading, {
    path: ['pattern'],
    given: request.pattern,
    fallback: 'scattered',
    why: 'Prints scattered evenly unless a pattern is asked for',
  });
  const touch = resolveTouch(reading, request.touch, prints);
  const fixed = isRead ? keepFixed(reading, request) : undefined;
  const { seed = SEED } = request;
  if (seed !== SEED) keep(reading, ['seed'], seed);
  if (reading.faults.length > 0) return fail(reading.faults);
  const input = { columns, rows, prints, pattern, touch, ...(fixed && { fixed }), seed };
  return succeed({ input, assumptions: reading.assumptions, query: writeQuery(reading.kept) });
}

function resolvePrints(
  reading: Reading,
  request: LayoutRequest,
  pinned: readonly number[],
): LayoutInput['prints'] {
  const { prints, columns, rows } = request;
  const shared = shareEvenly(columns * rows, pinned);
  const isShared = prints.every(({ count }, at) => count === undefined || count === shared[at]);
  const isCounted = prints.some(({ count }) => count !== undefined);
  if (isShared) assumeCounts(reading, shared);
  else checkCounts(reading, request, pinned);
  const seen = new Set<string>();
  return prints.map((print, at) => {
    const path = (name: string) => ['prints', at, name];
    if (seen.has(print.id)) {
      reading.faults.push({ code: 'repeated-id', path: path('id'), received: print.id });
    }
    seen.add(print.id);
    keep(reading, path('id'), print.id);
    const count = isCounted && !isShared ? (print.count ?? 0) : (shared[at] ?? 0);
    if (!isShared) keep(reading, path('count'), count);
    return { id: print.id, count, ...keepLook(reading, print, path) };
  });
}

function keepLook(
  reading: Reading,
  print: LayoutPrint,
  path: (name: string) => (string | number)[],
): Pick<LayoutPrint, 'value' | 'color'> {
  const value = print.value === undefined ? undefined : roundTo(print.value, 9);
  const color = print.color?.toLowerCase();
  if (value !== undefined) keep(reading, path('value'), value);
  if (color !== undefined) keep(reading, path('color'), color);
  return { ...(value !== undefined && { value }), ...(color !== undefined && { color }) };
}

/** As even as pins allow: prints pinned beyond an even share have just those, the rest is shared. */
function shareEvenly(blocks: number, pinned: readonly number[]): readonly number[] {
  let over = new Set<number>();
  for (;;) {
    const taken = [...over].reduce((sum, at) => sum + (pinned[at] ?? 0), 0);
    const weights = pinned.map((_, at) => (over.has(at) ? 0 : 1));
    const even = over.size < pinned.length ? apportionBlocks(blocks - taken, weights) : weights;
    const shared = pinned.map((count, at) => (over.has(at) ? count : (even[at] ?? 0)));
    const more = shared.flatMap((count, at) => (count < (pinned[at] ?? 0) ? [at] : []));
    if (more.length === 0) return shared;
    over = new Set([...over, ...more]);
  }
}

function assumeCounts(reading: Reading, shared: readonly number[]): void {
  const why = 'The grid is shared as evenly as whole blocks and pins allow';
  const value = shared.join(', ');
  reading.assumptions.push({ path: 'prints', value, why, source: SOURCES.hamilton });
}

function checkCounts(
  reading: Reading,
  { prints, columns, rows }: LayoutRequest,
  pinned: readonly number[],
): void {
  const sum = prints.reduce((total, { count }) => total + (count ?? 0), 0);
  if (prints.some(({ count }) => count === undefined) || sum !== columns * rows) {
    const expected = `a count for every print, ${columns * rows} in all`;
    reading.faults.push({ code: 'counts-do-not-sum', path: ['prints'], expected, received: sum });
  }
  for (const [at, { count }] of prints.entries()) {
    const least = pinned[at] ?? 0;
    if (count === undefined || count >= least) continue;
    const expected = `${least} or more, as ${letterOf(at)} is pinned ${least} times`;
    reading.faults.push({
      code: 'too-small',
      path: ['prints', at, 'count'],
      expected,
      received: count,
    });
  }
}

function resolveTouch(
  reading: Reading,
  given: Touch | undefined,
  prints: LayoutInput['prints'],
): Touch {
  const isEnough = prints.filter(({ count }) => count > 0).length > 3;
  const why = isEnough
    ? 'With four prints or more, blocks of one print can be kept from meeting even at corners'
    : 'With fewer than four prints no layout keeps like blocks from meeting at corners, so sides count';
  const fallback = isEnough ? 'corners' : 'sides';
  return readPlain<Touch>(reading, {
    path: ['touch'],
    given,
    fallback,
    why,
    source: SOURCES.model,
  });
}

/** Pins as given, where there are any. */
function keepFixed(reading: Reading, { fixed }: LayoutRequest): readonly string[] | undefined {
  if (fixed === undefined || fixed.every((row) => /^\.*$/.test(row))) return undefined;
  for (const [row, letters] of fixed.entries()) keep(reading, ['fixed', row], letters);
  return fixed;
}
