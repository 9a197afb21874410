import type { Level, PieceKind } from './list-levels.ts';
import { type StripList, takeOff } from './strip-plan.ts';

/** Strips cut alike. */
export interface CutStrip {
  readonly times: number;
  /** As tall as its tallest piece, mm. */
  readonly height: number;
  readonly pieces: readonly {
    readonly kind: number;
    /** In one strip. */
    readonly count: number;
    readonly turned: boolean;
  }[];
  /** Width that the pieces of one strip take, mm. */
  readonly used: number;
}

/**
 * The strips of a plan with exactly the pieces that are wanted: tallest first, pieces too many left
 * out of the last strips that would hold them, strips left with none dropped, and strips alike put
 * together.
 *
 * @param kinds with the pieces wanted of each
 */
export function trimPlan(
  kinds: readonly PieceKind[],
  levels: readonly Level[],
  strips: StripList,
): readonly CutStrip[] {
  const tallest = strips.toSorted((one, other) => other.pattern.level - one.pattern.level);
  let wanted: readonly number[] = kinds.map((kind) => kind.count);
  const cut: CutStrip[] = [];
  const add = (level: number, counts: readonly number[], times: number) => {
    const strip = cutStrip(kinds, levels[level], { counts, times });
    if (strip.pieces.length > 0) cut.push(strip);
    wanted = takeOff(wanted, { level, counts }, times);
  };
  for (const { pattern, times } of tallest) {
    const whole = Math.min(times, countWhole(pattern.counts, wanted));
    if (whole > 0) add(pattern.level, pattern.counts, whole);
    for (let rest = times - whole; rest > 0 && wanted.some((left) => left > 0); rest -= 1) {
      const counts = pattern.counts.map((count, kind) => Math.min(count, wanted[kind] ?? 0));
      if (counts.every((count) => count === 0)) break;
      add(pattern.level, counts, 1);
    }
  }
  return groupAlike(cut);
}

/** How many strips can be filled with pieces that are wanted. */
function countWhole(counts: readonly number[], wanted: readonly number[]): number {
  return Math.min(
    ...counts.flatMap((count, kind) =>
      count > 0 ? [Math.floor((wanted[kind] ?? 0) / count)] : [],
    ),
  );
}

function cutStrip(
  kinds: readonly PieceKind[],
  level: Level | undefined,
  strip: { readonly counts: readonly number[]; readonly times: number },
): CutStrip {
  let height = 0;
  let used = 0;
  const pieces: { kind: number; count: number; turned: boolean }[] = [];
  for (const [at, kind] of kinds.entries()) {
    const count = strip.counts[at] ?? 0;
    if (count === 0) continue;
    const turned = level?.turned[at] ?? false;
    height = Math.max(height, turned ? kind.across : kind.along);
    used += count * (turned ? kind.along : kind.across);
    pieces.push({ kind: at, count, turned });
  }
  return { times: strip.times, height, pieces, used };
}

function groupAlike(strips: readonly CutStrip[]): readonly CutStrip[] {
  const groups = new Map<string, CutStrip>();
  for (const strip of strips) {
    const key = JSON.stringify(strip.pieces);
    const times = strip.times + (groups.get(key)?.times ?? 0);
    groups.set(key, { ...strip, times });
  }
  return [...groups.values()].sort((one, other) => other.height - one.height);
}

/**
 * Σ height of strips as cut, mm.
 *
 * @example
 * heightOf([{ times: 3, height: 20, pieces: [], used: 0 }]) // => 60
 */
export function heightOf(strips: readonly CutStrip[]): number {
  return strips.reduce((sum, { times, height }) => sum + times * height, 0);
}
