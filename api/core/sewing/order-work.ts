import type { CautionCode, FabricName, Role, Stage, Step, Unit } from '../contract.ts';
import { writeExact, writeGap } from '../write-length.ts';

/** The figures that the steps name; lengths in millimetres. */
export interface WorkFacts {
  readonly unit: Unit;
  readonly columns: number;
  readonly rows: number;
  readonly cut: number;
  readonly seam: number;
  readonly snipDepth: number;
  readonly snipPitch: number;
  readonly clearance: number;
  /** Fabrics from the top down. */
  readonly fabrics: readonly FabricName[];
  /** Roles of the layers that are prewashed. */
  readonly prewashed: readonly Role[];
  /** False where a washed test block would tell more than is known. */
  readonly isMeasured: boolean;
  /** Pieces cut, spare ones included. */
  readonly pieces: number;
  readonly snips: number;
  readonly needle: string;
  readonly chained: boolean;
  readonly borderPasses: number;
  /** How likely a row end meets within the ease when joined from the middle, percent. */
  readonly within: number;
  readonly ease: number;
  /** Weight of the wet quilt as written. */
  readonly wet: string;
}

/**
 * The order of work, step by step: prewash or test swatch, cut, stack, quilt both ways, snip, lay
 * out, join, border, wash. Common practice, no source, with the figures of this quilt.
 */
export function orderWork(facts: WorkFacts): readonly Step[] {
  return [...prepare(facts), ...makeBlocks(facts), ...joinBlocks(facts), ...finish(facts)];
}

function step(
  id: string,
  stage: Stage,
  words: {
    readonly do: string;
    readonly count: number;
    readonly detail: string;
    readonly cautions?: readonly CautionCode[];
  },
): Step {
  return { id, stage, cautions: [], ...words };
}

function prepare(facts: WorkFacts): readonly Step[] {
  const { prewashed, pieces, fabrics, cut, unit, isMeasured } = facts;
  const side = writeExact(cut, unit);
  const swatch = step('swatch', 'prepare', {
    do: 'Sew one test block, measure it, wash it, measure it again',
    count: 1,
    detail: 'It tells how your own cloth shrinks, better than any table.',
    cautions: ['unmeasured-shrink', 'dye-bleed'],
  });
  const prewash = step('prewash', 'prepare', {
    do: `Wash and dry the cloth of the ${[...new Set(prewashed)].join(' and ')}`,
    count: 1,
    detail: 'Wash and dry it as the quilt will be washed, then press it flat.',
    cautions: ['dye-bleed'],
  });
  return [
    ...(isMeasured ? [] : [swatch]),
    ...(prewashed.length > 0 ? [prewash] : []),
    step('cut', 'cut', {
      do: `Cut ${countOf(pieces, 'square')} of ${side}`,
      count: pieces,
      detail: `Cut strips of ${side} across the roll, then squares from the strips. ${fabrics.length} layers, spare pieces included.`,
      cautions: ['rotary-cutter'],
    }),
  ];
}

/** A number with its noun, in the plural where it is not one. */
function countOf(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** The sandwich from the bottom up, in words. */
function describeStack(fabrics: readonly FabricName[]): string {
  const [bottom = '', ...rest] = fabrics.toReversed().map((name) => name.replace('-', ' '));
  const between = rest.slice(0, -1).map((name) => `, then ${name}`);
  const start = bottom.charAt(0).toUpperCase() + bottom.slice(1);
  return `${start} at the bottom${between.join('')}, ${rest.at(-1)} on top, right side up.`;
}

function makeBlocks(facts: WorkFacts): readonly Step[] {
  const { columns, rows, fabrics, chained, snips, needle, unit } = facts;
  const blocks = columns * rows;
  const isChain = chained && blocks > 1;
  const chain = isChain
    ? 'Feed the blocks one after another without cutting the thread.'
    : 'Cut the thread after each block.';
  return [
    step('stack', 'stack', {
      do: `Stack ${countOf(blocks, 'block')} of ${fabrics.length} layers`,
      count: blocks,
      detail: `${describeStack(fabrics)} Turn every other block of the stack a little, so that they part easily.`,
    }),
    step('quilt-first', 'quilt', {
      do:
        blocks === 1
          ? 'Quilt the block from corner to corner'
          : 'Quilt every block from corner to corner',
      count: blocks,
      detail: `A ${needle} needle. ${chain}`,
      cautions: ['needle-at-crossings'],
    }),
    ...(isChain
      ? [
          step('part', 'quilt', {
            do: 'Part the chain',
            count: blocks - 1,
            detail: 'Snip the links of thread between the blocks.',
          }),
        ]
      : []),
    step('quilt-second', 'quilt', {
      do: 'Quilt the other diagonal',
      count: blocks,
      detail: `Each block now has its X. ${chain}`,
    }),
    step('snip', 'snip', {
      do: `Snip all four sides of ${blocks === 1 ? 'the' : 'every'} block: ${countOf(snips, 'snip')}`,
      count: snips,
      detail: `${writeExact(facts.snipDepth, unit)} deep, ${writeExact(facts.snipPitch, unit)} apart, ${writeGap(facts.clearance, unit)} short of the seam to come. Snipping before joining is easier; after joining is the tradition.`,
      cautions: ['repetitive-snipping', 'snip-near-seam'],
    }),
  ];
}

function joinBlocks(facts: WorkFacts): readonly Step[] {
  const { columns, rows, unit } = facts;
  const joins = rows * (columns - 1);
  const seam = writeExact(facts.seam, unit);
  const middle =
    columns % 2 === 0
      ? `between blocks ${columns / 2} and ${columns / 2 + 1}`
      : `at block ${(columns + 1) / 2}`;
  const layout = step('layout', 'layout', {
    do: `Lay out ${columns} by ${rows} blocks and take a photograph`,
    count: columns * rows,
    detail: 'Mark the top-left block with a pin. Keep prints that are alike apart.',
  });
  const join = step('join', 'join', {
    do: `Join the blocks of each row, ${countOf(rows, 'row')} of ${columns}`,
    count: joins,
    detail: `Backing to backing, with an allowance of ${seam}, so that the raw edges stand on the front.`,
  });
  const joinRows = step('join-rows', 'join', {
    do: 'Join row to row',
    count: rows - 1,
    detail: `Begin in the middle, ${middle}, and sew outwards both ways.${describeEnds(facts)}`,
    cautions: ['needle-at-crossings'],
  });
  if (columns * rows === 1) return [];
  return [layout, ...(joins > 0 ? [join] : []), ...(rows > 1 ? [joinRows] : [])];
}

/** How often row ends meet, where some ease is allowed. */
function describeEnds({ ease, within, unit }: WorkFacts): string {
  if (ease === 0) return ' Unpick what does not meet.';
  const often = within > 99 ? 'nearly always' : `about ${Math.round(within)} times in 100`;
  return ` Ends meet within ${writeExact(ease, unit)} ${often}, and that much washes out. Unpick what is farther off.`;
}

function finish({ borderPasses, seam, unit, wet }: WorkFacts): readonly Step[] {
  return [
    step('border', 'border', {
      do: 'Stitch round the whole quilt',
      count: borderPasses,
      detail: `${writeExact(seam, unit)} inside the edge, ${borderPasses === 1 ? 'once' : `${borderPasses} times`}. Then snip any edge that is still whole.`,
      cautions: ['snip-near-seam'],
    }),
    step('trim', 'wash', {
      do: 'Trim the loose threads',
      count: 1,
      detail: 'Front and back, before the first wash.',
    }),
    step('wash', 'wash', {
      do: 'Wash, shake out, dry, and clean the lint away',
      count: 1,
      detail: `It weighs about ${wet} when wet. Shake it outdoors between washer and dryer. The fringe grows softer with each wash.`,
      cautions: ['washer-load', 'dryer-lint'],
    }),
  ];
}
