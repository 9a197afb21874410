import type { Grid } from '../block/size-quilt.ts';
import type { BobbinChange, SewingStep } from '../contract.ts';
import { nameRow } from '../layout/name-row.ts';
import type { ChainThread } from './plan-thread.ts';

/** Counting positions must not lose one to the last bit of a float. */
const TINY = 1e-9;

/** How the place within a step is told: in so many rows, from the first, each of so many blocks. */
interface Course {
  readonly rows: number;
  readonly first?: number;
  readonly blocks: number;
}

/**
 * Where the bobbins run out: half of all thread comes from the bobbin, and it is spent evenly along each
 * step. A change is told as after which block, since it may fall inside a long chain; the last seam before
 * a bobbin runs out is counted as not done. Remainders thrown away are not counted.
 *
 * @param quilt the grid, rounds of the border, and mm of thread on a bobbin
 * @param bobbins how many are wound in all
 * @returns changes gathered by step and row, in the order of the work; bobbins − 1 in all
 */
export function placeBobbins(
  chains: readonly ChainThread[],
  quilt: { readonly grid: Grid; readonly borderPasses: number; readonly bobbin: number },
  bobbins: number,
): readonly BobbinChange[] {
  const { bobbin } = quilt;
  let spent = 0;
  let done = 0;
  return chains.flatMap((run, index) => {
    const own = (run.chains * run.thread) / 2;
    const course = courseOf(run.step, quilt);
    const end = index === chains.length - 1 ? Number.POSITIVE_INFINITY : spent + own;
    const shares: number[] = [];
    for (; done < bobbins - 1 && (done + 1) * bobbin < end; done += 1) {
      shares.push(((done + 1) * bobbin - spent) / own);
    }
    spent += own;
    return gather(run.step, course, shares);
  });
}

function courseOf(
  step: SewingStep,
  { grid, borderPasses }: { readonly grid: Grid; readonly borderPasses: number },
): Course {
  const { columns, rows } = grid;
  if (step === 'join') return { rows, first: 0, blocks: columns - 1 };
  if (step === 'join-rows') return { rows: rows - 1, first: 1, blocks: columns };
  if (step === 'border') return { rows: 1, blocks: borderPasses * 2 * (columns + rows) };
  return { rows: 1, blocks: columns * rows };
}

/** Changes of one step, those in the same row together. */
function gather(
  step: SewingStep,
  { rows, first, blocks }: Course,
  shares: readonly number[],
): readonly BobbinChange[] {
  const found = new Map<number, { changes: number; readonly after: Set<number> }>();
  for (const share of shares) {
    const place = Math.min(Math.floor(share * rows * blocks + TINY), rows * blocks - 1);
    const row = Math.floor(place / blocks);
    const one = found.get(row) ?? { changes: 0, after: new Set<number>() };
    one.changes += 1;
    one.after.add(place - row * blocks);
    found.set(row, one);
  }
  return [...found].map(([row, { changes, after }]) => ({
    step,
    ...(first !== undefined && { row: nameRow(row + first) }),
    changes,
    after: [...after],
  }));
}
