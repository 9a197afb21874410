import type { Highs } from './solve-model.ts';
import { solveModel } from './solve-model.ts';
import type { StripCase } from './strip-cases.ts';

/** A strip: its height, and how many of each kind lie in it. */
export interface ModelStrip {
  readonly height: number;
  readonly counts: readonly number[];
}

type Cloth = Pick<StripCase, 'kinds' | 'usable'>;

/**
 * Every full strip there is, written down without the core: at each height that a side of a piece has,
 * every kind lies the narrower of the ways that fit, and a strip is full when nothing wanted fits more.
 */
export function listStrips({ kinds, usable }: Cloth, tallest = Number.POSITIVE_INFINITY) {
  const sides = kinds.flatMap(({ across, along, canTurn }) =>
    canTurn ? [across, along] : [along],
  );
  const heights = [...new Set(sides)].filter((height) => height <= tallest + 1e-5);
  return heights.flatMap((height): readonly ModelStrip[] => {
    const widths = kinds.map(({ across, along, canTurn }) => {
      const upright = along <= height + 1e-5 ? across : Number.POSITIVE_INFINITY;
      const turned = canTurn && across <= height + 1e-5 ? along : Number.POSITIVE_INFINITY;
      return Math.min(upright, turned);
    });
    return fillWidth({ kinds, usable }, widths).map((counts) => ({ height, counts }));
  });
}

function fillWidth({ kinds, usable }: Cloth, widths: readonly number[]) {
  const found: number[][] = [];
  const counts = kinds.map(() => 0);
  const visit = (at: number, room: number): void => {
    if (at === kinds.length) {
      const isFull = kinds.every(
        ({ count }, kind) => (counts[kind] ?? 0) >= count || (widths[kind] ?? 0) > room + 1e-5,
      );
      if (isFull && counts.some((count) => count > 0)) found.push([...counts]);
      return;
    }
    const width = widths[at] ?? Number.POSITIVE_INFINITY;
    const most = Math.min(kinds[at]?.count ?? 0, Math.floor((room + 1e-5) / width));
    for (let count = 0; count <= most; count += 1) {
      counts[at] = count;
      visit(at + 1, count === 0 ? room : room - count * width);
    }
    counts[at] = 0;
  };
  visit(0, usable);
  return found;
}

/** The least Σ of heights by HiGHS, in units of `unit` mm; nothing where it ran out of time. */
export function solveStrips(
  highs: Highs,
  { kinds, usable }: StripCase,
  { unit, seconds }: { readonly unit: number; readonly seconds: number },
): number | undefined {
  const strips = listStrips({ kinds, usable });
  return solveModel(highs, {
    costs: strips.map(({ height }) => Math.round(height / unit)),
    rows: kinds.map(({ count }, kind) => ({
      terms: strips.map(({ counts }) => counts[kind] ?? 0),
      least: count,
    })),
    seconds,
  });
}

/** The least over every strip for the first piece left, and so on; wants met before are remembered. */
export function leastByPieces({ kinds, usable }: StripCase): number {
  const strips = listStrips({ kinds, usable });
  const known = new Map<string, number>();
  const least = (wanted: readonly number[]): number => {
    const first = wanted.findIndex((count) => count > 0);
    if (first < 0) return 0;
    const key = wanted.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const totals = strips
      .filter(({ counts }) => (counts[first] ?? 0) > 0)
      .map(({ height, counts }) => {
        const left = wanted.map((count, kind) => Math.max(0, count - (counts[kind] ?? 0)));
        return height + least(left);
      });
    known.set(key, Math.min(...totals));
    return Math.min(...totals);
  };
  return least(kinds.map(({ count }) => count));
}
