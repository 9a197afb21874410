import type { FabricName, Step } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { writeExact, writeGap } from '../write-length.ts';
import { countChanges } from './count-changes.ts';
import { makeStep } from './make-step.ts';
import { sayBobbins } from './say-bobbins.ts';
import { sayCount } from './say-count.ts';
import type { WorkFacts } from './work-facts.ts';

/**
 * From squares to snipped blocks: stack, quilt both ways, part the chain between, snip.
 */
export function orderBlocks(facts: WorkFacts): readonly Step[] {
  const blocks = facts.columns * facts.rows;
  const isChain = facts.chained && blocks > 1;
  const part = makeStep('part', 'quilt', {
    do: 'Part the chain',
    count: blocks - 1,
    detail: 'Snip the links of thread between the blocks.',
    figures: { links: blocks - 1 },
  });
  return [
    stackLayers(facts, blocks),
    quiltFirst(facts, blocks, isChain),
    ...(isChain ? [part] : []),
    quiltSecond(facts, blocks, isChain),
    snipSides(facts, blocks),
  ];
}

function stackLayers({ fabrics, prints, time }: WorkFacts, blocks: number): Step {
  const apart = prints > 1 ? ` Keep a stack for each of the ${prints} prints.` : '';
  return makeStep('stack', 'stack', {
    do: `Stack ${sayCount(blocks, 'block')} of ${fabrics.length} layers`,
    count: blocks,
    detail: `${describeStack(fabrics)} Turn every other block of the stack a little, so that they part easily.${apart}`,
    minutes: time.stack,
    figures: { blocks, layers: fabrics.length, fabrics: fabrics.toReversed(), prints },
  });
}

/** The sandwich from the bottom up, in words. */
function describeStack(fabrics: readonly FabricName[]): string {
  const [bottom = '', ...rest] = fabrics.toReversed().map((name) => name.replace('-', ' '));
  const between = rest.slice(0, -1).map((name) => `, then ${name}`);
  const start = bottom.charAt(0).toUpperCase() + bottom.slice(1);
  return `${start} at the bottom${between.join('')}, ${rest.at(-1)} on top, right side up.`;
}

/** How the blocks follow one another under the needle. */
function sayChain(isChain: boolean): string {
  return isChain
    ? 'Feed the blocks one after another without cutting the thread.'
    : 'Cut the thread after each block.';
}

function quiltFirst(facts: WorkFacts, blocks: number, isChain: boolean): Step {
  const { needle, time, bobbins } = facts;
  return makeStep('quilt-first', 'quilt', {
    do: `Quilt ${blocks === 1 ? 'the' : 'every'} block from corner to corner`,
    count: blocks,
    detail: `A ${needle} needle. ${sayChain(isChain)}${sayBobbins(bobbins, 'quilt-first')}`,
    minutes: time.quilt / 2,
    figures: {
      blocks,
      needle,
      links: isChain ? blocks - 1 : 0,
      bobbins: countChanges(bobbins, 'quilt-first'),
    },
    cautions: ['needle-at-crossings'],
  });
}

function quiltSecond(facts: WorkFacts, blocks: number, isChain: boolean): Step {
  return makeStep('quilt-second', 'quilt', {
    do: 'Quilt the other diagonal',
    count: blocks,
    detail: `Each block now has its X. ${sayChain(isChain)}${sayBobbins(facts.bobbins, 'quilt-second')}`,
    minutes: facts.time.quilt / 2,
    figures: {
      blocks,
      links: isChain ? blocks - 1 : 0,
      bobbins: countChanges(facts.bobbins, 'quilt-second'),
    },
  });
}

function snipSides(facts: WorkFacts, blocks: number): Step {
  const { snips, snipsJoined, snipDepth, snipPitch, clearance, unit, time, minutesJoined } = facts;
  const inUnit = (value: number) => fromMillimetres(value, unit);
  const gap = writeGap(clearance, unit);
  return makeStep('snip', 'snip', {
    do: `Snip all four sides of ${blocks === 1 ? 'the' : 'every'} block: ${sayCount(snips, 'snip')}`,
    count: snips,
    detail: `${writeExact(snipDepth, unit)} deep, ${writeExact(snipPitch, unit)} apart, ${gap} short of the seam to come. ${compareSnips(facts, blocks)}`,
    minutes: time.snip,
    figures: {
      blocks,
      snips,
      depth: inUnit(snipDepth),
      pitch: inUnit(snipPitch),
      clearance: inUnit(clearance),
      snipsJoined,
      minutesJoined: roundTo(minutesJoined, 4),
    },
    cautions: ['repetitive-snipping', 'snip-near-seam'],
  });
}

/** What it would be to snip after joining, as the tradition has it. */
function compareSnips(
  { snips, snipsJoined, time, minutesJoined }: WorkFacts,
  blocks: number,
): string {
  if (blocks === 1) return 'Stop each snip well before the stitching.';
  const fewer = Math.round(time.snip - minutesJoined);
  const saved = fewer > 0 ? `, about ${sayCount(fewer, 'minute')} less` : '';
  return `Snipping before joining is easier; after joining is the tradition: both allowances of a seam at once, ${snips - snipsJoined} fewer${saved}, each through twice the cloth.`;
}
