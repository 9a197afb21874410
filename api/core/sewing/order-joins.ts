import type { Step, Unit } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { writeExact } from '../write-length.ts';
import { countChanges } from './count-changes.ts';
import { makeStep } from './make-step.ts';
import { sayBobbins } from './say-bobbins.ts';
import { sayCount } from './say-count.ts';
import type { WorkFacts } from './work-facts.ts';

/** What a ruler shows: a sixteenth of an inch, a millimetre. */
const MARK = { in: 25.4 / 16, cm: 1 } as const;

/**
 * From blocks to the whole: lay out, join the rows, join row to row from the middle outwards. A lone block
 * has none of it, a lone row or column only its own.
 */
export function orderJoins(facts: WorkFacts): readonly Step[] {
  const { columns, rows } = facts;
  if (columns * rows === 1) return [];
  return [
    layOut(facts),
    ...(columns > 1 ? [joinBlocks(facts)] : []),
    ...(rows > 1 ? [joinRows(facts)] : []),
  ];
}

function layOut({ columns, rows, prints, topLeft, time }: WorkFacts): Step {
  const print = prints > 1 ? `, of print ${topLeft},` : '';
  return makeStep('layout', 'layout', {
    do: `Lay out ${columns} by ${rows} blocks and take a photograph`,
    count: columns * rows,
    detail: `Mark the top-left block${print} with a pin. Keep prints that are alike apart.`,
    minutes: time.layout,
    figures: { columns, rows, prints, topLeft },
  });
}

function joinBlocks({ columns, rows, seam, unit, chained, bobbins, time }: WorkFacts): Step {
  const joins = columns - 1;
  const chain =
    chained && joins > 1 ? ` Sew each row as one chain of ${sayCount(joins, 'seam')}.` : '';
  return makeStep('join', 'join', {
    do: `Join the blocks of each row, ${sayCount(rows, 'row')} of ${columns}`,
    count: rows * joins,
    detail: `Backing to backing, with an allowance of ${writeExact(seam, unit)}, so that the raw edges stand on the front.${chain}${sayBobbins(bobbins, 'join')}`,
    minutes: time.joins,
    figures: {
      rows,
      columns,
      joins,
      seam: fromMillimetres(seam, unit),
      bobbins: countChanges(bobbins, 'join'),
    },
  });
}

function joinRows(facts: WorkFacts): Step {
  const { rows, middle, bobbins, time, unit, ends, mismatch, ease } = facts;
  const inUnit = (value: number) => fromMillimetres(value, unit);
  const percent = (chance: number) => roundTo(100 * chance, 4);
  const where =
    middle.from === middle.to
      ? `at block ${middle.from}`
      : `between blocks ${middle.from} and ${middle.to}`;
  return makeStep('join-rows', 'join', {
    do: 'Join row to row',
    count: rows - 1,
    detail: `Begin in the middle, ${where}: match it, and pin outwards both ways.${describeEnds(facts)}${sayBobbins(bobbins, 'join-rows')}`,
    minutes: time.rows,
    figures: {
      seams: rows - 1,
      ...middle,
      half: inUnit(ends.half),
      most: inUnit(ends.most),
      mostFromOneEnd: inUnit(ends.mostFromOneEnd),
      ease: inUnit(ease),
      within: percent(mismatch.withinFromCentre),
      withinFromOneEnd: percent(mismatch.withinFromOneEnd),
      ends: ends.ends,
      unpick: roundTo(ends.unpick, 4),
      unpickFromOneEnd: roundTo(ends.unpickFromOneEnd, 4),
      bobbins: countChanges(bobbins, 'join-rows'),
    },
    cautions: ['needle-at-crossings'],
  });
}

/** By how much row ends miss, how often that washes out, and what is left to unpick. */
function describeEnds({ ease, ends, mismatch, unit }: WorkFacts): string {
  const { half, most, mostFromOneEnd } = ends;
  const expected =
    most === 0
      ? ''
      : ` Half of the ends miss by less than ${writeUp(half, unit)}, 95 in 100 by less than ${writeUp(most, unit)}; joined from one end it would be ${writeUp(mostFromOneEnd, unit)}.`;
  if (ease === 0) return `${expected} Unpick what does not meet.`;
  const within = 100 * mismatch.withinFromCentre;
  const often = within > 99 ? 'nearly always' : `about ${Math.round(within)} times in 100`;
  const unpick = Math.round(ends.unpick);
  const left = unpick > 0 ? `, about ${unpick} of the ${ends.ends} ends` : '';
  return `${expected} Ends meet within ${writeExact(ease, unit)} ${often}, and that much washes out. Unpick what is farther off${left}.`;
}

/** A length rounded up to what a ruler shows. */
function writeUp(millimetres: number, unit: Unit): string {
  return writeExact(Math.ceil(millimetres / MARK[unit] - 1e-9) * MARK[unit], unit);
}
